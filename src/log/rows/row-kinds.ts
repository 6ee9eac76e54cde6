import { headerMeaning } from "../columns/header-meaning";
import { propose } from "../columns/propose";
import { type ColumnHeader } from "../columns/header-rows";
import { type LogGrid } from "../reading";
import { rowShape } from "../columns/row-shape";
import { isBlank, plain } from "../../cells/text";

const startsWithFigure = /^\s*[-+~<>]?\d/;
const vesselHeading =
  /^(?:pot|plant|bucket|planter|container|vessel|bag|topf|maceta|planta|plante)s?\s*[#:.-]*\s*\w{1,3}(?:\s*[-:,(].*)?$/;

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

/**
 * The header once more, further down: in the same words, or in others that mean the same in each column ("EC drain" for
 * "Runoff EC"); `other` when it names other columns.
 */
export function headerAgain(
  grid: LogGrid,
  row: number,
  headers: readonly ColumnHeader[],
  main: readonly unknown[],
): "same" | "other" | undefined {
  const cells = grid.cells[row] ?? [];
  let filled = 0;
  for (const cell of cells) {
    if (typeof cell === "number" || typeof cell === "boolean") return undefined;
    if (typeof cell !== "string" || isBlank(cell)) continue;
    if (startsWithFigure.test(cell)) return undefined;
    filled += 1;
  }
  if (filled < 2) return undefined;
  if (cells.every((cell, column) => text(cell) === text(main[column]))) return "same";
  const shape = rowShape(grid, row);
  if (shape.readings < 1 || shape.figures > 0 || shape.names * 2 < shape.filled) return undefined;
  if (headers.length === 0 || (shape.readings < 2 && shape.filled > 2)) return undefined;
  return cells.every((cell, column) => isBlank(cell) || meansTheSame(text(cell), headers[column])) ? "same" : "other";
}

/** The same quantity, in a unit that is the same or not said again. */
function meansTheSame(words: string, header: ColumnHeader | undefined): boolean {
  if (header === undefined) return false;
  const [now, then] = [headerMeaning(words), header.meaning];
  const [one, other] = [propose(now), propose(then)];
  const sameUnit =
    now.unit === undefined || now.unit === then.unit || (then.unit === undefined && now.unit === "mS/cm");
  return (
    one.quantity === other.quantity &&
    one.measure === other.measure &&
    sameUnit &&
    (one.quantity !== undefined || words === plain(header.text))
  );
}

/** The words of a row, cell by cell. */
export const wordsOf = (cells: readonly unknown[]): string[] => cells.map(text);

/** Whether a filled row holds these words, cell by cell. */
export const isInWords = (cells: readonly unknown[], words: readonly string[]): boolean =>
  cells.every((cell, column) => typeof cell !== "number" && text(cell) === (words[column] ?? ""));

const text = (cell: unknown): string => (typeof cell === "string" ? plain(cell) : "");
