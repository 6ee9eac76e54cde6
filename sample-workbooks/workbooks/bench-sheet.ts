import { type Cell, type SheetSpec, type Validation } from "../xlsx/spec";
import { type StyleName } from "../xlsx/style-table";
import { formula, gridOf, typed } from "./grid";

const media = ["coir", "peat", "bark", "mineral wool", "inert", "soil"] as const;
const feeders = ["light", "medium", "heavy"] as const;

/** The facts about a pot that its log does not repeat on every row. */
export interface PotCard {
  readonly title: string;
  readonly story: string;
  readonly medium: (typeof media)[number];
  readonly feeder: (typeof feeders)[number];
  readonly containerLitres: number;
  readonly waterEc: number;
  readonly meter: string;
}

/** A question, the formula that answers it, and a word on how to read the answer. */
export interface Question {
  readonly asked: string;
  readonly formula: string;
  readonly style?: StyleName;
  /** Left out where the formula gives its own reason in the next cell. */
  readonly how?: string;
  /** Lines that the reason takes up; 1 unless told otherwise. */
  readonly lines?: number;
}

/** Names by which the log's formulas reach the settings; the rows are those of `benchSheet`. */
export const benchNames = [
  { name: "Medium", refersTo: "Bench!$B$5" },
  { name: "Feeder", refersTo: "Bench!$B$6" },
  { name: "RatioLimit", refersTo: "Bench!$B$7" },
  { name: "ContainerLitres", refersTo: "Bench!$B$8" },
  { name: "WaterEc", refersTo: "Bench!$B$9" },
  { name: "Band", refersTo: "Bench!$B$13" },
];

/** In points. */
const lineHeight = 15;

/** Row of the first question on the sheet, counted from 1; the settings' rows are those that `benchNames` tells. */
const firstQuestionRow = 20;

const heading = (...texts: string[]): Cell[] => texts.map((text) => typed(text, "headingLeft"));

const setting = (label: string, value: string | number, use: string): Cell[] => [typed(label, "label"), typed(value, "setting"), typed(use, "wrapped")];

/** A line that a formula answers; without a word on how to read it, the formula gives its own reason in the third cell. */
const answer = ({ asked, formula: text, style = "answer", how }: Question): Cell[] => [
  typed(asked, "label"),
  formula(text, style),
  how === undefined ? typed(undefined, "reason") : typed(how, "wrapped"),
];

const limit = (asked: string, which: string, how: string): Cell[] => answer({ asked, formula: `RUNOFF.BANDLIMIT(Band,"${which}")`, how });

const settings = (card: PotCard): Cell[][] => [
  heading("This pot", "Change the boxed cells", "What it is used for"),
  setting("Medium", card.medium, "picks the limits for the runoff"),
  setting("Feeder", card.feeder, "how much the plant feeds: light, medium or heavy"),
  setting("Highest salt ratio", 1.5, "runoff EC over feed EC; a row above it is flagged"),
  setting("Container, litres", card.containerLitres, "the pot's own size, not the water it holds"),
  setting("Water EC, mS/cm", card.waterEc, "what comes from the tap before any feed"),
  setting("Meter", card.meter, "readings that are not compensated go through ECAT25 first"),
];

const limits: readonly (readonly Cell[])[] = [
  heading("Limits for this pot", "From the medium", "Unit"),
  answer({ asked: "Band", formula: 'Medium&", "&Feeder', how: "as the functions take it" }),
  limit("Runoff pH, lowest", "ph low", "pH"),
  limit("Runoff pH, highest", "ph high", "pH"),
  limit("Runoff EC, lowest", "ec low", "mS/cm at 25 C"),
  limit("Runoff EC, highest", "ec high", "mS/cm at 25 C"),
];

const validations: readonly Validation[] = [
  { range: "B5", allowed: { list: media }, hint: "one of the media the limits are known for" },
  { range: "B6", allowed: { list: feeders }, hint: "light, medium or heavy" },
  { range: "B7", allowed: { between: [1, 10] }, hint: "runoff EC over feed EC, 1 to 10" },
  { range: "B8", allowed: { between: [0.1, 1000] }, hint: "the pot's size in litres" },
  { range: "B9", allowed: { between: [0, 5] }, hint: "EC of the water in mS/cm" },
];

/** The sheet beside a log: what the pot is, the limits it is held against, and what the log answers. */
export function benchSheet(card: PotCard, questions: readonly Question[]): SheetSpec {
  const asked = [heading("Asked of the log", "Answer", "Why, or how to read it"), ...questions.map(answer)];
  const title = [[typed(card.title, "title")], [typed(card.story, "quiet")]];
  const heights = questions.map(({ lines = 1 }, i): [number, number] => [firstQuestionRow + i, lines * lineHeight + 3]);
  return {
    name: "Bench",
    cells: gridOf([...title, [], ...settings(card), [], ...limits, [], ...asked]),
    widths: [52, 36, 104],
    heights: new Map(heights),
    validations,
    gridLines: false,
  };
}
