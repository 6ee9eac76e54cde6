import { type Entry, sheetDay } from "../scenario/diary";
import { type Cell, type SheetSpec } from "../xlsx/spec";
import { type StyleName } from "../xlsx/style-table";
import { formula, gridOf, typed } from "./grid";

const firstRow = 6;
const target = "$E$2";
/** Rows kept free under the plan. */
const mostPortions = 16;
const headings = ["Portion", "Litres", "Runoff EC", "Runoff pH", "Litres so far", "Litres left", "Stop check", "Why"];

/** What the grower wrote on the day of a flush. */
export interface FlushDay {
  readonly vessel: string;
  /** The runoff before any water. */
  readonly before: Entry | undefined;
  readonly portions: readonly Entry[];
  readonly targetEc: number;
}

/** The day of a flush, portion by portion: what is still needed and whether to stop, from all readings down to each row. */
export function flushDaySheet({ vessel, before, portions, targetEc }: FlushDay): SheetSpec {
  const lines = before === undefined ? portions : [before, ...portions];
  const [first] = portions;
  const day = first === undefined ? undefined : sheetDay(first);
  const plan = `RUNOFF.FLUSHPLAN(ContainerLitres,C${firstRow},${target},WaterEc,Medium)`;
  return {
    name: "Flush day",
    cells: gridOf([
      [typed(`${vessel}: the flush, portion by portion`, "title")],
      [typed("Date"), typed(day, "date"), undefined, typed("Target EC"), typed(targetEc, "setting"), typed("mS/cm", "quiet")],
      [typed("Pour a portion, wait until it has drained, measure the last of the drain, write it down, read the stop check.", "quiet")],
      [typed("Drain water carries salt: keep it away from electrical gear, and pour it where your local rules allow.", "quiet")],
      headings.map((text, i) => typed(text, i < 6 ? "heading" : "headingLeft")),
      ...lines.map(portionRow),
      [],
      [typed("The plan before the first portion; the readings above replace it as they come", "quiet")],
      [formula(plan, "heading"), ...emptyCells(["heading", "heading", "heading"])],
      ...Array.from({ length: mostPortions }, () => emptyCells(["centred", "litres", "litres", "ec"])),
    ]),
    widths: [10, 11.5, 13, 19, 13, 12, 26, 106],
    heights: new Map(lines.map((_, i) => [firstRow + i, 32])),
    validations: [{ range: "E2", allowed: { between: [0.1, 20] }, hint: "runoff EC to reach, mS/cm at 25 C; above the water's own EC" }],
    frozen: { rows: firstRow - 1, columns: 1 },
    printedHeader: `${firstRow - 1}:${firstRow - 1}`,
    gridLines: false,
  };
}

/** Cells that a spill may fill, with the look that its values are to have. */
const emptyCells = (looks: readonly StyleName[]): Cell[] => looks.map((look) => typed(undefined, look));

function portionRow(entry: Entry, i: number): (Cell | undefined)[] {
  const row = firstRow + i;
  const column = (letter: string): string => `${letter}$${firstRow}:${letter}${row}`;
  return [
    typed(i === 0 ? "before" : i, "centred"),
    i === 0 ? undefined : typed(entry.feedLitres, "litres"),
    typed(entry.runoffEc, "ec"),
    typed(entry.runoffPh, "ph"),
    formula(`SUM(${column("B")})`, "ratio"),
    formula(`RUNOFF.FLUSHLEFT(${column("B")},${column("C")},${target},WaterEc)`, "ratio"),
    formula(`RUNOFF.FLUSHSTOP(${column("D")},${column("C")},Band,${column("B")},ContainerLitres,TRUE)`, "answer"),
    typed(undefined, "reason"),
  ];
}
