import { type LogGrid } from "../reading";
import { isFigure, namesReading, type RowShape, rowShape, weekWords } from "./row-shape";
import { isBlank, plain } from "../../cells/text";

const rowsSearched = 50;
const sidewaysText =
  "Dates run across the top and the readings down the side. Copy the log, paste it transposed (Paste Special, Transpose), and read that.";
const weeksText =
  "Weeks run across the top. The log is read with one row for each day: give every reading a row with its date.";
const potsText =
  "Pots stand side by side. The log is read with one row for each pot and day: put the pot's name into a column of its own.";
const potHeader = /\b(?:pot|plant|bucket|bag|topf|maceta|plante)\s*[#:.-]?\s*(\d{1,3}|[a-h])\b/;

/**
 * A sheet whose rows are not readings: what stands across it, in words; `undefined` for a log with a row for each
 * reading.
 */
export function otherLayout(grid: LogGrid): string | undefined {
  const shapes = Array.from({ length: Math.min(grid.cells.length, rowsSearched) }, (_, row) => rowShape(grid, row));
  if (shapes.some((shape) => sideBySide(grid, shape))) return potsText;
  if (shapes.some((shape) => shape.readings >= 2 && shape.figures === 0 && shape.weeks === 0)) return undefined;
  if (sideways(grid, shapes)) return sidewaysText;
  return shapes.some((shape) => shape.weeks >= 2) ? weeksText : undefined;
}

/** Two readings or more named down the first columns, and three dates or weeks across. */
function sideways(grid: LogGrid, shapes: readonly RowShape[]): boolean {
  const across = shapes.some(
    (shape) => shape.weeks >= 2 || (shape.figures >= 3 && shape.readings === 0 && acrossDates(grid, shape)),
  );
  const down = new Set(shapes.flatMap((shape) => [0, 1].flatMap((column) => {
    const meaning = shape.meanings.get(column);
    const cell = grid.cells[shape.row]?.[column];
    return meaning !== undefined && namesReading(meaning) && typeof cell === "string" ? [plain(cell)] : [];
  })));
  return across && down.size >= 2;
}

/** Dates or a run of day numbers, with at most a word in front. */
function acrossDates(grid: LogGrid, shape: RowShape): boolean {
  const cells = (grid.cells[shape.row] ?? []).filter((cell) => !isBlank(cell));
  return cells.slice(1).every((cell) => isFigure(cell) || (typeof cell === "string" && weekWords.test(plain(cell))));
}

function sideBySide(grid: LogGrid, shape: RowShape): boolean {
  if (shape.figures > 0) return false;
  const pots = new Set<string>();
  for (const [column, meaning] of shape.meanings) {
    const cell = grid.cells[shape.row]?.[column];
    const pot = typeof cell === "string" && namesReading(meaning) ? potHeader.exec(plain(cell)) : null;
    if (pot?.[1] !== undefined) pots.add(pot[1]);
  }
  return pots.size >= 2;
}
