import { type ColumnHeader } from "../columns/header-rows";
import { type ColumnReading, type LogGrid } from "../reading";
import { rowShape } from "../columns/row-shape";
import { isBlank, plain, quoted } from "../../cells/text";

/** At the start of a row that sums up others. */
const summaryWords =
  /^(?:grand )?(?:totals?|sum|average|averages|avg|mean|median|min|max|minimum|maximum|std|stdev|count|summe|mittelwert|durchschnitt|schnitt|promedio|moyenne|gemiddelde?|totaal)\b/;
const startsWithFigure = /^\s*[-+~<>]?\d/;
const hasFigure = /\d/;
const vesselHeading = /^(?:pot|plant|bucket|planter|container|vessel|bag|topf|maceta|planta|plante)s?\s*[#:.-]*\s*\w{1,3}$/;

/** A row of figures that sums up others: a word of the table stands where a date or a name would. */
export function summaryIn(cells: readonly unknown[], columns: readonly ColumnReading[]): string | undefined {
  for (const [column, cell] of cells.entries()) {
    if (isBlank(cell)) continue;
    const quantity = columns[column]?.quantity;
    const label = typeof cell === "string" && quantity !== "notes" && !startsWithFigure.test(cell);
    if (label && summaryWords.test(plain(cell))) return `${quoted(cell)} sums up other rows`;
    if (quantity === "date" && hasFigure.test(String(cell))) return undefined;
  }
  return undefined;
}

/** A name alone in its row, over the rows of that vessel. */
export function headingIn(cells: readonly unknown[]): string | undefined {
  let only: unknown;
  for (const cell of cells) {
    if (isBlank(cell)) continue;
    if (only !== undefined || typeof cell !== "string") return undefined;
    only = cell;
  }
  return typeof only === "string" && vesselHeading.test(plain(only)) ? only.trim() : undefined;
}

/** The header once more, further down; `other` when it names other columns. */
export function headerAgain(grid: LogGrid, row: number, headers: readonly ColumnHeader[], main: readonly unknown[]): "same" | "other" | undefined {
  const cells = grid.cells[row] ?? [];
  if (cells.some((cell) => typeof cell === "number" || (typeof cell === "string" && startsWithFigure.test(cell)))) return undefined;
  const filled = cells.filter((cell) => !isBlank(cell));
  if (filled.length < 2 || filled.some((cell) => typeof cell !== "string")) return undefined;
  if (cells.every((cell, column) => text(cell) === text(main[column]))) return "same";
  const shape = rowShape(grid, row);
  if (shape.readings < 2 || shape.figures > 0 || shape.names * 2 < shape.filled) return undefined;
  return headers.length > 0 ? "other" : undefined;
}

const text = (cell: unknown): string => (typeof cell === "string" ? plain(cell) : "");
