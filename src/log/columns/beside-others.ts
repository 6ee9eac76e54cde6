import { plantLookOf } from "../rows/plant-cell";
import { type LogQuantity } from "../log";
import { type Column } from "./column";
import { namesOnlyWater } from "./header-meaning";
import { isBare } from "./measures";

// What a column holds by what the others hold.

/** A pH beside a runoff pH is the input's: the only one whose side is not said, beside one whose side is. */
export function byElimination(column: Column, all: readonly Column[]): Column {
  const { measure, choices, header } = column;
  const same = all.filter((other) => other !== column && other.measure === measure);
  const others = new Set(same.map((other) => other.quantity));
  const [said] = others;
  const quantity = choices.find((choice) => choice !== said);
  const isLeft = others.size === 1 && said !== undefined && choices.includes(said) && isBare(header.meaning);
  if (!isLeft || measure === undefined || quantity === undefined) return column;
  return { ...column, quantity, choices: [], why: `the other ${measure} column is the ${said}` };
}

/**
 * How the plant looks told in words is a note, which loses no figure among them; told in figures it is a scale of 0 to
 * 3.
 */
export function wordsAreNotes(column: Column): Column {
  const isLook =
    column.quantity !== undefined && plantLookOf(column.quantity) !== undefined && column.answer === undefined;
  if (!isLook || column.sample.numbers * 2 > column.sample.filled || column.sample.filled === 0) return column;
  return { ...column, quantity: "notes", choices: [], why: "its cells are words" };
}

/**
 * Whole sentences that change from row to row are notes, where the words over them name nothing else and no column is
 * named as the notes: beside one they may be a plan.
 */
export function sentencesAreNotes(column: Column, all: readonly Column[]): Column {
  const { quantity, answer, header, sample } = column;
  const isNamed = [...header.meaning.concepts].some((concept) => concept !== "filler") || header.meaning.unit !== undefined;
  if (all.some((other) => other.header.meaning.concepts.has("notes"))) return column;
  if (quantity !== "other" || answer !== undefined || isNamed || !sample.sentences || !sample.changes) return column;
  return { ...column, quantity: "notes", choices: [], why: "its cells are sentences" };
}

/** A temperature next to the humidity is the air's. */
export function besideHumidity(column: Column, all: readonly Column[]): Column {
  if (column.quantity !== undefined || column.measure !== "temperature") return column;
  const neighbours = [all[column.column - 1], all[column.column + 1]];
  const beside = neighbours.some((other) => other?.quantity === "humidity");
  return beside
    ? { ...column, quantity: "air temperature", choices: [], why: "it stands beside the humidity" }
    : column;
}

/** "Water EC" beside "Tank EC" is of the water before any feed is in it; alone it is what was poured. */
export function waterBesideFeed(column: Column, all: readonly Column[]): Column {
  const { quantity, answer, header } = column;
  if (answer !== undefined || quantity?.startsWith("input ") !== true || !namesOnlyWater(header.text)) return column;
  const feed = all.some((other) => other.quantity === quantity && !other.header.meaning.concepts.has("anyWater"));
  return feed ? { ...column, quantity: "other", choices: [], why: "the water before any feed is in it" } : column;
}

/** An extract beside the runoff is another method; alone it is asked about. */
export function extractBesideRunoff(column: Column, all: readonly Column[]): Column {
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
export function onlyOnce(column: Column, all: readonly Column[]): Column {
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
