import { readLog } from "../../src/index";
import { type ColumnOutcome, type Outcome, type RowOutcome } from "./outcome";
import { columnsSaid, plainGrid, plainSheet } from "./plain-sheet";

/** What came of a sheet whose whole reading is written down: a column differs from it, or does not. */
export function plainOutcome(name: string): Outcome {
  const sheet = plainSheet(name);
  const grid = plainGrid(name, sheet);
  const reading = readLog(grid, sheet.answers);
  const asked = new Set(reading.questions.flatMap(({ columns }) => columns));
  const refused = reading.questions.some(({ kind }) => kind === "layout");
  const columns = columnsSaid(reading).map((said, column): ColumnOutcome => {
    if (asked.has(column) || refused) return "asked";
    return said === sheet.columns[column] ? "right" : "wrong in silence";
  });
  const wanted = new Set(sheet.rows.map(([row]) => Number(row) - 1));
  const told = new Set(reading.problems.map(({ row }) => row));
  const used = reading.rows.map(({ row }): RowOutcome => {
    if (!wanted.has(row)) return "wrong in silence";
    return told.has(row) ? "told" : "right";
  });
  const aside = reading.setAside.map((): RowOutcome => "set aside with reason");
  const lost = grid.cells.length - used.length - aside.length - reading.blankRows - reading.headerRows.length;
  const rows = [...used, ...aside, ...Array.from({ length: Math.abs(lost) }, (): RowOutcome => "lost")];
  const wrong = [...columns, ...rows].filter((outcome) => outcome === "wrong in silence" || outcome === "lost");
  const faults = wrong.length === 0 ? [] : [`${wrong.length} columns or rows differ from the written reading`];
  return { columns, rows, faults };
}
