import { type Cell, type SheetSpec } from "../xlsx/spec";
import { type StyleName } from "../xlsx/style-table";
import { formula, gridOf, typed } from "./grid";

/** The facts about a pot that its log does not repeat on every row. */
export interface PotCard {
  readonly title: string;
  readonly story: string;
  /** "coir, medium": a medium and how strong a feeder stands in it. */
  readonly band: string;
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
}

/** Names by which the log's formulas reach the settings; the rows are those of `benchSheet`. */
export const benchNames = [
  { name: "Band", refersTo: "Bench!$B$5" },
  { name: "RatioLimit", refersTo: "Bench!$B$6" },
  { name: "ContainerLitres", refersTo: "Bench!$B$7" },
  { name: "WaterEc", refersTo: "Bench!$B$8" },
];

/** Row of the first question on the sheet, counted from 1; the settings' rows are those that `benchNames` tells. */
const firstQuestionRow = 18;

const limit = (which: string): string => `RUNOFF.BANDLIMIT(Band,"${which}")`;

/** The sheet beside a log: what the pot is, the limits it is held against, and what the log answers. */
export function benchSheet(card: PotCard, questions: readonly Question[]): SheetSpec {
  const heading = (...texts: string[]): Cell[] => texts.map((text) => typed(text, "headingLeft"));
  const setting = (label: string, value: string | number, use: string): Cell[] => [typed(label, "label"), typed(value, "setting"), typed(use, "wrapped")];
  const answer = (label: string, text: string, { style = "answer", how = "" }: { style?: StyleName; how?: string } = {}): (Cell | undefined)[] => [
    typed(label, "label"),
    formula(text, style),
    typed(how, how === "" ? "reason" : "wrapped"),
  ];
  const limits = (quantity: "ph" | "ec", label: string, unit: string, style: StyleName): (Cell | undefined)[][] => [
    answer(`${label}, lowest`, limit(`${quantity} low`), { style, how: unit }),
    answer(`${label}, highest`, limit(`${quantity} high`), { style, how: unit }),
  ];
  return {
    name: "Bench",
    cells: gridOf([
      [typed(card.title, "title")],
      [typed(card.story, "quiet")],
      [],
      heading("This pot", "Change the boxed cells", "What it is used for"),
      setting("Medium and feeder", card.band, "picks the limits for the runoff: medium, then light, medium or heavy feeder"),
      setting("Highest salt ratio", 1.5, "runoff EC over feed EC; a row above it is flagged"),
      setting("Container, litres", card.containerLitres, "the pot's own size, not the water it holds"),
      setting("Water EC, mS/cm", card.waterEc, "what comes from the tap before any feed"),
      setting("Meter", card.meter, "readings that are not compensated go through ECAT25 first"),
      [],
      heading("Limits for this pot", "From the medium", "Unit"),
      ...limits("ph", "Runoff pH", "pH", "answer"),
      ...limits("ec", "Runoff EC", "mS/cm at 25 C", "answer"),
      [],
      ...(questions.length === 0 ? [] : [heading("Asked of the log", "Answer", "Why, or how to read it")]),
      ...questions.map(({ asked, formula: text, style = "answer", how = "" }) => answer(asked, text, { style, how })),
    ]),
    widths: [56, 34, 84],
    heights: new Map(questions.flatMap(({ how }, i) => (how === undefined ? [[firstQuestionRow + i, 32]] : []))),
    gridLines: false,
  };
}
