/** What of a cell tells how high it is. */
interface TallCell {
  readonly value?: string | number;
  readonly style?: string;
  readonly lines?: number;
}

/** Points: a line of the usual text, and what keeps it off the edges; roomy enough for a pen. */
const textLine = 14;
const edges = 5;

const largeHeights: Readonly<Record<string, number>> = { title: 26, large: 28, largeText: 24, largeLabel: 22 };

/** What a formula will say is not known yet: room for two lines, unless the cell asks for more. */
const unknownLines = 2;

/**
 * Points that a row takes, in columns so many characters wide. The host sets no row higher when a formula's words grow.
 */
export const rowHeight = (cells: readonly (TallCell | undefined)[], widths: readonly number[]): number =>
  Math.max(...cells.map((cell, column) => cellHeight(cell, widths[column] ?? 0)), textLine + edges);

function cellHeight(cell: TallCell | undefined, width: number): number {
  if (cell?.style === undefined) return 0;
  const said = cell.value === undefined ? (cell.lines ?? unknownLines) : linesOf(String(cell.value), width);
  const lines = cell.style === "wrapped" ? said : 1;
  return Math.max(largeHeights[cell.style] ?? 0, lines * textLine + edges);
}

/** Lines that a text takes, broken between words. */
function linesOf(text: string, width: number): number {
  let [lines, used] = [1, 0];
  for (const word of text.split(" ")) {
    if (used > 0 && used + 1 + word.length > width) [lines, used] = [lines + 1, word.length];
    else used += word.length + (used > 0 ? 1 : 0);
  }
  return lines;
}
