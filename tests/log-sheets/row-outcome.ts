import { type LogRow } from "../../src/index";
import { type Expected, place } from "./expected";
import { fieldOf, type Look, type RowOutcome } from "./outcome";

export interface JudgedRow { readonly outcome: RowOutcome; readonly fault: string | undefined }
const fine = (outcome: RowOutcome): JudgedRow => ({ outcome, fault: undefined });

/** What came of a row that is a reading, or that only looks like one. */
export function rowOutcome(expected: Expected, look: Look, row: number): JudgedRow {
  const truth = expected.kind(row);
  const used = look.used.get(row);
  const reason = look.aside.get(row);
  const name = `row ${row + 1}`;
  if (used !== undefined && truth === "aside") return usedThoughNone(look, used, name);
  if (used !== undefined) return usedRow(expected, look, used, name);
  if (reason === undefined || reason === "") return lostOrHeader(look, row, truth, name);
  if (truth !== "reading" || waits(expected, look, row)) return fine("set aside with reason");
  return { outcome: "set aside with reason", fault: `${name} is set aside (${reason}), and is a reading` };
}

function lostOrHeader(look: Look, row: number, truth: string, name: string): JudgedRow {
  if (truth === "aside" && look.reading.headerRows.includes(row)) return fine("set aside with reason");
  return { outcome: "lost", fault: `${name} is neither used nor set aside` };
}

/** A row that is no reading does no harm where every figure taken from it is doubted. */
function usedThoughNone({ told, reading }: Look, used: LogRow, name: string): JudgedRow {
  const taken = reading.columns.filter(({ quantity, read }) => {
    const field = fieldOf[quantity];
    return read && field !== undefined && used[field] !== undefined;
  });
  const silent = taken.some(({ column }) => !told.has(place(used.row, column)));
  const fault = `${name} is used, and is no reading`;
  if (silent) return { outcome: "wrong in silence", fault };
  return { outcome: "told", fault: taken.length > 0 ? fault : undefined };
}

/** Whether all that was measured in the row stands in columns that wait, or in cells that no one can use. */
function waits(expected: Expected, { reading, refused }: Look, row: number): boolean {
  return refused || expected.columns.every(([truth], column) => {
    if (truth === undefined || reading.columns[column]?.read !== true) return true;
    if (truth.quantity === "keeper" || fieldOf[truth.quantity] === undefined) return true;
    return expected.value(row, column, truth.unit) === null || expected.unplain(row, column);
  });
}

function usedRow(expected: Expected, look: Look, used: LogRow, name: string): JudgedRow {
  const day = dayFault(expected, look, used);
  const outcome = day?.startsWith("no day") === true ? "lost" : "wrong in silence";
  if (day !== undefined) return { outcome, fault: `${name}: ${day}` };
  const pot = potFault(expected, look, used);
  if (pot !== undefined) return { outcome: "wrong in silence", fault: `${name}: ${pot}` };
  const said = look.reading.columns.some(({ column }) => look.told.has(place(used.row, column)));
  return fine(said ? "told" : "right");
}

const isOne = (quantities: readonly string[]) => (truths: Expected["columns"][number], column: number): number[] =>
  truths.some(({ quantity }) => quantities.includes(quantity)) ? [column] : [];

function dayFault(expected: Expected, look: Look, used: LogRow): string | undefined {
  const want = expected.day(used.row);
  const dates = expected.columns.flatMap(isOne(["date", "time"]));
  const said = dates.some((column) => look.asked.has(column) || look.told.has(place(used.row, column)));
  const mustTell = dates.some((column) => expected.told.has(place(used.row, column)));
  if (said || want === undefined) return undefined;
  const isRead = dates.some((column) => look.reading.columns[column]?.read);
  if (want === null && used.day === undefined) return mustTell ? "no day, nothing said" : undefined;
  if (want === null) return `day ${String(used.day)} where none can be known, nothing said`;
  if (used.day === undefined) return isRead ? "no day, nothing said" : undefined;
  const whole = Number.isInteger(want);
  const same = Math.abs((whole ? Math.floor(used.day) : used.day) - want) < 1e-6;
  if (!same) return `day ${used.day} for ${want}`;
  return mustTell ? "its day is doubtful, nothing said" : undefined;
}

/** Rows of one pot must share a name, and rows of two pots must not. */
function potFault({ pot, columns }: Expected, look: Look, used: LogRow): string | undefined {
  const own = pot(used.row);
  const vessels = columns.flatMap(isOne(["vessel"]));
  const said = vessels.some((column) => look.asked.has(column) || look.told.has(place(used.row, column)));
  if (own === undefined || said) return undefined;
  for (const [row, other] of look.used) {
    if (row >= used.row) break;
    const one = pot(row) === own;
    if (one === (other.vessel === used.vessel)) continue;
    return `${one ? "one pot by two names" : "two pots by one name"} with row ${row + 1}`;
  }
  return undefined;
}
