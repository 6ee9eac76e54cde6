import { columnLetters } from "../../../src/index";
import { type SheetTemplate } from "../../../taskpane/templates/sheet-template";
import type { Scalar } from "../../../workbench/host/excel/sheet-store";
import { computed } from "../../taskpane/templates/computed";

type Cells = readonly (readonly Scalar[])[];

/** A sheet of the pane's own as its cells show it, some of its boxes filled in by label or by address. */
export async function shownBy(template: SheetTemplate, typed: Parameters<typeof computed>[1] = {}): Promise<Cells> {
  const { at } = await computed(template, typed);
  const width = Math.max(...template.rows.map((row) => row.length));
  return template.rows.map((_, r) => Array.from({ length: width }, (__, c): Scalar => {
    const shown = at(`${columnLetters(c)}${r + 1}`);
    return typeof shown === "number" || typeof shown === "string" || typeof shown === "boolean" ? shown : "";
  }));
}

/** A page of words about the log, as many books begin with. */
export const readMe: Cells = [
  ["How we keep this log"], ["Measure EC in and EC runoff every morning, pH too."], ["Runoff: the first 100 mL."],
];

/** What a salt costs and how much of it is left: a table, and no log. */
export const stock: Cells = [
  ["Salt", "In the bag (kg)", "Price"],
  ["Calcium nitrate", 18, 24.5],
  ["Epsom salt", 6.5, 9],
  ["Potassium nitrate", 22, 41],
];

/** A title over a log; the host keeps a merged title in its first cell. */
export const underTitle = (log: Cells): Cells => [["Pepper bench, summer"], ...log];

/** A log as it is headed in Italian: feed, drain, and the notes. */
export const italian: Cells = [
  ["Data", "EC ingresso (mS/cm)", "pH ingresso", "EC drenaggio (mS/cm)", "pH drenaggio", "Note"],
  ...Array.from({ length: 12 }, (_, day): Scalar[] => [
    46_082 + day,
    1.5,
    5.8,
    Math.round((2 + 0.3 * day) * 100) / 100,
    6,
    "",
  ]),
];

/** Twelve pots, each read on six days; the runoff of pots 3 and 9 climbs. */
export const twelvePots: Cells = [
  ["Date", "Pot", "Feed EC (mS/cm)", "Feed pH", "Runoff EC (mS/cm)", "Runoff pH"],
  ...Array.from({ length: 72 }, (_, row): Scalar[] => {
    const [day, pot] = [Math.floor(row / 12), (row % 12) + 1];
    const climbs = pot === 3 || pot === 9;
    return [46_082 + day, `Pot ${pot}`, 1.6, 5.8, climbs ? 4 + 0.4 * day : 2 + (pot % 4) / 10, 6];
  }),
];

/** A logger's readings, one each half hour; the runoff's EC goes up and down within coir's band. */
export const halfHourly = (rows: number): Cells => [
  ["Date", "Feed EC (mS/cm)", "Feed pH", "Runoff EC (mS/cm)", "Runoff pH", "Fed (L)", "Runoff (L)", "Notes"],
  ...Array.from({ length: rows }, (_, row): Scalar[] => [
    Math.round((43_831 + row / 48) * 1e5) / 1e5, 1.5, 5.8, 2 + (row % 37) / 50, 5.8 + (row % 5) / 10, 2, 0.4, "",
  ]),
];
