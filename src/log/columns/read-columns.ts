import { type LogUnit } from "../../cells/units";
import { columnUnit } from "./column-unit";
import { type Column } from "./column";
import { plantLookOf } from "../rows/plant-cell";
import { settleDates } from "./date-columns";
import { settleSides } from "./side-columns";
import { settleVessels } from "./vessel-columns";
import { type ColumnHeader } from "./header-rows";
import { type LogQuantity } from "../log";
import { namesOnlyWater } from "./header-meaning";
import { isBare, type Measure, propose } from "./propose";
import { type Asked, columnQuestion, unitQuestion } from "../questions";
import {
  type ColumnAnswer,
  type ColumnReading,
  type LogAnswers,
  type LogGrid,
  type LogQuestion,
  type LogQuestionKind,
} from "../reading";
import { type ColumnSample } from "./sample";

const measureOfQuantity = (quantity: LogQuantity): Measure | undefined =>
  (["EC", "pH", "volume", "temperature", "humidity"] as const).find((measure) => quantity.endsWith(measure));

export interface ColumnSource {
  readonly headers: readonly ColumnHeader[];
  readonly samples: readonly ColumnSample[];
  readonly answers: LogAnswers;
  readonly grid: LogGrid;
  /** The first row below the header. */
  readonly firstRow: number;
}

/** What each column holds, and what has to be asked. */
export function readColumns(
  { headers, samples, answers, grid, firstRow }: ColumnSource,
): { readonly columns: readonly ColumnReading[]; readonly questions: readonly LogQuestion[] } {
  let columns = headers.map((header, column) => firstLook(column, header, samples[column], answers.columns?.[column]));
  columns = [...settleSides(columns, grid, firstRow)];
  columns = columns.map((column) => byElimination(column, columns));
  columns = columns.map((column) => besideHumidity(column, columns));
  columns = columns.map(wordsAreNotes);
  columns = settleVessels(settleDates(columns), grid, firstRow);
  columns = columns.map((column) => waterBesideFeed(column, columns));
  columns = columns.map((column) => extractBesideRunoff(column, columns));
  columns = columns.map((column) => onlyOnce(column, columns));
  const asked = columns
    .filter(isOpen)
    .map((column) => columnQuestion(asking(column), sentence(column.why), column.choices));
  const units = columns.map((column) => withUnit(column, answers));
  return { columns: units.map(({ reading }) => reading), questions: [...asked, ...unitQuestions(units)] };
}

const noSample: ColumnSample = {
  filled: 0,
  numbers: 0,
  dates: 0,
  median: undefined,
  unit: undefined,
  figures: [],
  dateLike: 0,
  weekdays: false,
  changes: false,
};

function firstLook(column: number, header: ColumnHeader, sample = noSample, answer: ColumnAnswer | undefined): Column {
  const proposal = propose(header.meaning);
  if (answer === undefined) return { ...proposal, column, header, sample, answer };
  const { quantity } = answer;
  return {
    quantity,
    measure: measureOfQuantity(quantity),
    why: "as answered",
    choices: [],
    column,
    header,
    sample,
    answer,
  };
}

/** A pH beside a runoff pH is the input's: the only one whose side is not said, beside one whose side is. */
function byElimination(column: Column, all: readonly Column[]): Column {
  const { measure } = column;
  if (column.quantity !== undefined || measure === undefined || !isBare(column.header.meaning)) return column;
  const same = all.filter((other) => other.measure === measure && other !== column);
  const sides = new Set(same.map((other) => other.quantity));
  const [said] = sides;
  if (sides.size !== 1 || said === undefined) return column;
  const quantity = column.choices.find((choice) => choice !== said);
  if (quantity === undefined || !column.choices.includes(said)) return column;
  return { ...column, quantity, choices: [], why: `the other ${measure} column is the ${said}` };
}

/** How the plant looks told in words is a note; told in figures it is a scale of 0 to 3. */
function wordsAreNotes(column: Column): Column {
  const isLook =
    column.quantity !== undefined && plantLookOf(column.quantity) !== undefined && column.answer === undefined;
  if (!isLook || column.sample.numbers * 2 > column.sample.filled || column.sample.filled === 0) return column;
  return { ...column, quantity: "notes", choices: [], why: "its cells are words" };
}

/** A temperature next to the humidity is the air's. */
function besideHumidity(column: Column, all: readonly Column[]): Column {
  if (column.quantity !== undefined || column.measure !== "temperature") return column;
  const neighbours = [all[column.column - 1], all[column.column + 1]];
  const beside = neighbours.some((other) => other?.quantity === "humidity");
  return beside
    ? { ...column, quantity: "air temperature", choices: [], why: "it stands beside the humidity" }
    : column;
}

/** "Water EC" beside "Tank EC" is of the water before any feed is in it; alone it is what was poured. */
function waterBesideFeed(column: Column, all: readonly Column[]): Column {
  const { quantity, answer, header } = column;
  if (answer !== undefined || quantity?.startsWith("input ") !== true || !namesOnlyWater(header.text)) return column;
  const feed = all.some((other) => other.quantity === quantity && !other.header.meaning.concepts.has("anyWater"));
  return feed ? { ...column, quantity: "other", choices: [], why: "the water before any feed is in it" } : column;
}

/** An extract beside the runoff is another method; alone it is asked about. */
function extractBesideRunoff(column: Column, all: readonly Column[]): Column {
  const { quantity, measure, header } = column;
  if (quantity !== undefined || measure === undefined || !header.meaning.concepts.has("extract")) return column;
  const isRunoffRead = all.some((other) => other.quantity === `runoff ${measure}`);
  return isRunoffRead ? { ...column, quantity: "other", choices: [], why: "another method than the runoff" } : column;
}

const inSeveral: ReadonlySet<LogQuantity> = new Set<LogQuantity>(["other", "notes", "vessel"]);

/** No word, figure or part of the day that tells it from another column of its quantity. */
const isPlain = ({ header: { meaning } }: Column): boolean =>
  meaning.strangers === 0 && !meaning.numbered && !meaning.concepts.has("partOfDay") && !meaning.concepts.has("device");

/**
 * A quantity is read from one column: the plainest, the first of the plain ones, unless a person says otherwise. Notes
 * and names (bed and pot) may stand in several.
 */
function onlyOnce(column: Column, all: readonly Column[]): Column {
  const { quantity, answer } = column;
  if (quantity === undefined || answer !== undefined || inSeveral.has(quantity)) return column;
  const same = all.filter((other) => other.quantity === quantity && other !== column);
  const answered = same.find((other) => other.answer !== undefined);
  const plainer = same.find((other) => isPlain(other) && (!isPlain(column) || other.column < column.column));
  const first = answered ?? plainer;
  if (first === undefined && (same.length === 0 || isPlain(column))) return column;
  if (first === undefined)
    return { ...column, quantity: undefined, choices: [quantity], why: `more than one column seems to be ${quantity}` };
  const why = `${quantity} is read from column ${first.header.letters}`;
  const asks = quantity.endsWith("EC") || quantity.endsWith("pH") || quantity.endsWith("volume");
  return { ...column, quantity: asks ? undefined : "other", choices: asks ? [quantity] : [], why };
}

/** A column is asked about when it holds figures; words and empty columns can stay unread. */
const isOpen = (column: Column): boolean =>
  column.quantity === undefined && (column.sample.numbers > 0 || column.insists === true);

const asking = ({ column, header }: Column): Asked => ({ column, letters: header.letters, header: header.text });
const sentence = (why: string): string => why.charAt(0).toUpperCase() + why.slice(1);

interface WithUnit {
  readonly reading: ColumnReading;
  readonly asks: LogQuestionKind | undefined;
}

function withUnit(column: Column, answers: LogAnswers): WithUnit {
  const { quantity = "other", bySide, measure, why, sample, header: { text: header, letters, meaning } } = column;
  const reading = (unit: LogUnit | undefined, reason: string, read: boolean): ColumnReading => ({
    column: column.column,
    letters,
    header,
    quantity,
    unit,
    why: reason,
    read,
    ...(bySide === undefined ? {} : { bySide }),
  });
  if (quantity === "other" && bySide === undefined) return { reading: reading("", why, false), asks: undefined };
  if (measure === undefined) return { reading: reading("", why, true), asks: undefined };
  if (column.answer?.unit !== undefined)
    return { reading: reading(column.answer.unit, "as answered", true), asks: undefined };
  const written = {
    unit: meaning.unit,
    scale: meaning.scale,
    dissolvedSolids: meaning.concepts.has("tds") && !meaning.concepts.has("ec"),
  };
  const found = columnUnit(measure, written, sample, answers);
  const reason = [why, found.why].filter((part) => part !== "").join("; ");
  if (found.unit !== undefined) return { reading: reading(found.unit, reason, true), asks: undefined };
  return { reading: reading(undefined, reason, false), asks: sample.numbers > 0 ? found.asks : undefined };
}

function unitQuestions(columns: readonly WithUnit[]): LogQuestion[] {
  const kinds = new Set(columns.flatMap(({ asks }) => asks ?? []));
  return [...kinds].map((kind) =>
    unitQuestion(
      kind,
      columns.filter(({ asks }) => asks === kind).map(({ reading }) => reading),
    ),
  );
}
