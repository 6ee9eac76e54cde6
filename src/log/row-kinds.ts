import { dateCell } from "./date-cell";
import { type ColumnHeader } from "./header-rows";
import { type ColumnReading, type LogGrid } from "./reading";
import { rowShape } from "./row-shape";
import { isBlank, plain, quoted } from "./text";
import { summaryWords } from "./words";

const vesselHeading = /^(?:pot|plant|bucket|planter|container|vessel|bag|topf|maceta|planta|plante)s?\s*[#:.-]*\s*\w{1,3}$/;

/** A row of figures that sums up others: a word of the table stands where a date or a name would. */
export function summaryIn(cells: readonly unknown[], columns: readonly ColumnReading[]): string | undefined {
  for (const [column, cell] of cells.entries()) {
    if (isBlank(cell)) continue;
    const reading = columns[column];
    const isLabel = typeof cell === "string" && reading?.quantity !== "notes" && summaryWords.test(plain(cell));
    if (isLabel) return `${quoted(cell)} sums up other rows`;
    if (reading?.quantity === "date" && dateCell(cell, false).kind !== "none") return undefined;
  }
  return undefined;
}

/** A name alone in its row, over the rows of that vessel. */
export function headingIn(cells: readonly unknown[]): string | undefined {
  const filled = cells.filter((cell) => !isBlank(cell));
  const [only] = filled;
  return filled.length === 1 && typeof only === "string" && vesselHeading.test(plain(only)) ? only.trim() : undefined;
}

/** The header once more, further down; `other` when it names other columns. */
export function headerAgain(grid: LogGrid, row: number, headers: readonly ColumnHeader[], main: readonly unknown[]): "same" | "other" | undefined {
  const cells = grid.cells[row] ?? [];
  const filled = cells.filter((cell) => !isBlank(cell));
  if (filled.length < 2 || filled.some((cell) => typeof cell !== "string")) return undefined;
  if (cells.every((cell, column) => text(cell) === text(main[column]))) return "same";
  const shape = rowShape(grid, row);
  if (shape.readings < 2 || shape.figures > 0 || shape.names * 2 < shape.filled) return undefined;
  return headers.length > 0 ? "other" : undefined;
}

const text = (cell: unknown): string => (typeof cell === "string" ? plain(cell) : "");
