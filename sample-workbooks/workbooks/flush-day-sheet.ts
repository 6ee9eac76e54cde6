import { type Entry, sheetDay } from "../scenario/diary";
import { type Cell, type SheetSpec } from "../xlsx/spec";
import { formula, gridOf, typed } from "./grid";

const firstRow = 6;

/**
 * The day of a flush, portion by portion, with the stop check after each: it looks at all readings down to its own row.
 * The first row is the runoff before any water.
 */
export function flushDaySheet(vessel: string, before: Entry | undefined, portions: readonly Entry[]): SheetSpec {
  const heading = ["Portion", "Litres", "Runoff EC", "Runoff pH", "Litres so far", "Stop check", "Why"];
  const lines = before === undefined ? portions : [before, ...portions];
  const rows = lines.map((entry, i): (Cell | undefined)[] => {
    const row = firstRow + i;
    const readings = `D$${firstRow}:D${row},C$${firstRow}:C${row},Band,B$${firstRow}:B${row}`;
    return [
      typed(i === 0 ? "before" : i, "centred"),
      i === 0 ? undefined : typed(entry.feedLitres, "litres"),
      typed(entry.runoffEc, "ec"),
      typed(entry.runoffPh, "ph"),
      formula(`SUM(B$${firstRow}:B${row})`, "ratio"),
      formula(`RUNOFF.FLUSHSTOP(${readings},ContainerLitres,TRUE)`, "answer"),
      typed(undefined, "reason"),
    ];
  });
  const [first] = portions;
  return {
    name: "Flush day",
    cells: gridOf([
      [typed(`${vessel}: the flush, portion by portion`, "title")],
      [typed("Date"), typed(first === undefined ? undefined : sheetDay(first), "date")],
      [typed("Pour a portion, wait until it has drained, measure the last of the drain, write it down, read the stop check.", "quiet")],
      [typed("Drain water carries salt: keep it off floors with electrical gear, and pour it where your local rules allow.", "quiet")],
      heading.map((text, i) => typed(text, i < 5 ? "heading" : "headingLeft")),
      ...rows,
    ]),
    widths: [10, 11.5, 11, 11, 13, 26, 96],
    heights: new Map(lines.map((_, i) => [firstRow + i, 32])),
    frozen: { rows: firstRow - 1, columns: 1 },
    printedHeader: `${firstRow - 1}:${firstRow - 1}`,
    gridLines: false,
  };
}
