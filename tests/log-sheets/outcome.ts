import { type ColumnReading, type LogQuantity, type LogReading, type LogRow } from "../../src/index";
import { type Expected, place } from "./expected";
import { type ColumnTruth } from "./truth";

export type ColumnOutcome = "right" | "asked" | "wrong told" | "wrong in silence";
export type RowOutcome = "right" | "told" | "set aside with reason" | "wrong in silence" | "lost";

/** What came of a sheet, and what of it a person would not accept. */
export interface Outcome {
  readonly columns: readonly ColumnOutcome[];
  readonly rows: readonly RowOutcome[];
  /** One line each: where, and what is wrong. Empty when the sheet holds. */
  readonly faults: readonly string[];
}

/** The field of a row in which each measured quantity stands. */
export const fieldOf: Partial<Record<LogQuantity, keyof LogRow>> = {
  "input EC": "inputEc", "input pH": "inputPh", "input volume": "inputLitres",
  "runoff EC": "runoffEc", "runoff pH": "runoffPh", "runoff volume": "runoffLitres",
  "solution temperature": "solutionCelsius", "air temperature": "airCelsius", "humidity": "humidityPercent",
};

/** A reading with what is looked up often. */
export interface Look {
  readonly reading: LogReading;
  readonly used: ReadonlyMap<number, LogRow>;
  readonly aside: ReadonlyMap<number, string>;
  readonly asked: ReadonlySet<number>;
  /** Nothing of the sheet is read until a question on the whole of it is answered. */
  readonly refused: boolean;
  /** Cells of which something is said, "row,column". */
  readonly told: ReadonlySet<string>;
}

/** A reading of feed and runoff from rows of their own stands in both. */
const rowsOf = ({ feedRow, row }: LogRow): number[] =>
  feedRow === undefined ? [row] : [feedRow, row].sort((one, other) => one - other);

export function lookAt(reading: LogReading): Look {
  const whole = reading.questions.some(({ kind }) => kind === "layout" || kind === "which row is the header");
  return {
    reading,
    used: new Map(reading.rows.flatMap((row) => rowsOf(row).map((each) => [each, row]))),
    aside: new Map(reading.setAside.map(({ row, reason }) => [row, reason])),
    asked: new Set(reading.questions.flatMap(({ columns }) => columns)),
    refused: whole && reading.rows.length === 0,
    told: new Set(reading.problems.map(({ row, column }) => place(row, column))),
  };
}

interface Judged { readonly outcome: ColumnOutcome; readonly fault: string | undefined }
const fine = (outcome: ColumnOutcome): Judged => ({ outcome, fault: undefined });
const ranks: readonly ColumnOutcome[] = ["right", "asked", "wrong told", "wrong in silence"];

/** The best outcome of a column over the truths that are good for it. */
export function columnOutcome(expected: Expected, look: Look, column: number): Judged {
  const outcomes = (expected.columns[column] ?? []).map((truth) => against(expected, look, column, truth));
  const accepted = outcomes.filter(({ fault }) => fault === undefined);
  const choice = accepted.length > 0 ? accepted : outcomes;
  const [best] = choice.sort((one, other) => ranks.indexOf(one.outcome) - ranks.indexOf(other.outcome));
  return best ?? { outcome: "wrong in silence", fault: "a column beyond the sheet's" };
}

function against(expected: Expected, look: Look, column: number, truth: ColumnTruth): Judged {
  const said = look.reading.columns[column];
  const name = `column ${said?.letters ?? column} (${said?.header ?? ""})`;
  if (look.refused || look.asked.has(column)) {
    const good = truth.mayAsk || expected.sheet.refused === true || expected.sheet.bySide !== undefined;
    return good ? fine("asked") : { outcome: "asked", fault: `${name} is asked, and is ${truth.quantity}` };
  }
  if (said?.bySide !== undefined) return sidesOutcome(expected, look, said, truth, name);
  const quantity = said?.read === true ? said.quantity : "other";
  if (quantity === "other") return unread(expected, truth, name, said?.why ?? "");
  if (quantity !== truth.quantity || truth.unit === "unknown") {
    const told = wholeColumnTold(expected, look, column);
    if (told && truth.mayAsk) return fine("wrong told");
    const fault = `${name} is read as ${quantity} ${said?.unit ?? ""}, and is ${truth.quantity} ${truth.unit}`;
    return { outcome: told ? "wrong told" : "wrong in silence", fault };
  }
  return cellsOutcome(expected, look, column, truth, name);
}

/** Each row's cell must stand on the side that the row is of, and nowhere where the row is of neither. */
function sidesOutcome(expected: Expected, look: Look, said: ColumnReading, truth: ColumnTruth, name: string): Judged {
  const { sheet: { bySide }, grid, kind } = expected;
  const { column, bySide: read } = said;
  if (bySide === undefined || read === undefined) return { outcome: "wrong in silence", fault: `${name} is read by side` };
  const wrong = grid.cells.flatMap((cells, row) => {
    if (kind(row) !== "reading") return [];
    const word = cells[bySide.column.charCodeAt(0) - "A".charCodeAt(0)];
    const side = word === bySide.input ? "input" : word === bySide.runoff ? "runoff" : undefined;
    if (side === undefined) return look.told.has(place(row, column)) ? [] : [`row ${row + 1} of neither side, nothing said`];
    const field = read[side].startsWith(`${side} `) ? fieldOf[read[side]] : undefined;
    const came = field === undefined ? undefined : (look.used.get(row)?.[field] as number | undefined);
    const want = expected.value(row, column, truth.unit) ?? undefined;
    return same(came, want) ? [] : [`row ${row + 1} ${String(came)} for ${String(want)}`];
  });
  if (wrong.length === 0) return fine("right");
  return { outcome: "wrong in silence", fault: `${name}: ${wrong.slice(0, 3).join("; ")}` };
}

function unread({ sheet, pot, grid }: Expected, truth: ColumnTruth, name: string, why: string): Judged {
  if (truth.quantity === "other") return fine("right");
  const pots = new Set(grid.cells.map((_, row) => pot(row)));
  const mixes = truth.quantity === "vessel" && pots.size > 1;
  const fault = `${name} is left unread (${why}), and is ${truth.quantity}`;
  if (mixes || why === "") return { outcome: "wrong in silence", fault };
  return truth.mayTell || sheet.refused === true ? fine("wrong told") : { outcome: "wrong told", fault };
}

function wholeColumnTold({ grid, kind }: Expected, { told, used }: Look, column: number): boolean {
  return grid.cells.every((cells, row) => {
    const counts = kind(row) === "reading" && used.has(row) && (cells[column] ?? "") !== "";
    return !counts || told.has(place(row, column));
  });
}

/** Within rounding of each other, or both nothing. */
function same(came: number | undefined, want: number | undefined): boolean {
  if (came === undefined || want === undefined) return came === want;
  return Math.abs(came - want) <= 1e-9 * Math.max(1, Math.abs(want));
}

function cellsOutcome(expected: Expected, look: Look, column: number, truth: ColumnTruth, name: string): Judged {
  const field = truth.quantity === "keeper" ? undefined : fieldOf[truth.quantity];
  if (field === undefined) return fine("right");
  const wrong: string[] = [];
  const silent: string[] = [];
  look.used.forEach((row) => {
    if (expected.kind(row.row) === "aside") return;
    const came = row[field] as number | undefined;
    const want = expected.value(row.row, column, truth.unit) ?? undefined;
    const said = look.told.has(place(row.row, column));
    const saidWhat = `row ${row.row + 1} ${String(came)} for ${String(want)}`;
    if (expected.told.has(place(row.row, column)) && !said) silent.push(`${saidWhat}, nothing said`);
    else if (!same(came, want) && !said) silent.push(saidWhat);
    else if (!same(came, want) && !expected.unplain(row.row, column)) wrong.push(saidWhat);
  });
  if (silent.length > 0) return { outcome: "wrong in silence", fault: `${name}: ${silent.slice(0, 3).join("; ")}` };
  if (wrong.length === 0) return fine("right");
  const fault = `${name}: told, yet wrong: ${wrong.slice(0, 3).join("; ")}`;
  return { outcome: "wrong told", fault: truth.mayAsk ? undefined : fault };
}
