import { type LogUnit } from "../../cells/units";
import {
  besideHumidity, byElimination, extractBesideRunoff, onlyOnce, sentencesAreNotes, waterBesideFeed, wordsAreNotes,
} from "./beside-others";
import { columnUnit } from "./column-unit";
import { type Column } from "./column";
import { settleDates } from "./date-columns";
import { settleSides } from "./side-columns";
import { settleVessels } from "./vessel-columns";
import { type ColumnHeader } from "./header-rows";
import { type LogQuantity } from "../log";
import { type Measure } from "./measures";
import { propose } from "./propose";
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
  /** The words over each column, and what its cells tell. */
  readonly looks: readonly { readonly header: ColumnHeader; readonly sample: ColumnSample }[];
  readonly answers: LogAnswers;
  readonly grid: LogGrid;
  /** The first row below the header. */
  readonly firstRow: number;
}

/** What each column holds, and what has to be asked. */
export function readColumns(
  { looks, answers, grid, firstRow }: ColumnSource,
): { readonly columns: readonly ColumnReading[]; readonly questions: readonly LogQuestion[] } {
  let columns = looks.map(({ header, sample }, column) => firstLook(column, header, sample, answers.columns?.[column]));
  columns = [...settleSides(columns, grid, firstRow)];
  columns = columns.map((column) => byElimination(column, columns));
  columns = columns.map((column) => besideHumidity(column, columns));
  columns = columns.map(wordsAreNotes);
  columns = columns.map((column) => sentencesAreNotes(column, columns));
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

function firstLook(
  column: number, header: ColumnHeader, sample: ColumnSample, answer: ColumnAnswer | undefined,
): Column {
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
