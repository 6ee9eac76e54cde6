import { columnLetters } from "../../src/index";

/** The address of a cell by row and column, both counted from 0: B3. */
export const cellAddress = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

/** Rows counted from 0, as a person says them: "rows 2 to 31, 40". */
export function rowsInWords(rows: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const row of rows) {
    const run = runs.at(-1);
    if (run !== undefined && row === run[1] + 1) run[1] = row;
    else runs.push([row, row]);
  }
  const said = runs
    .slice(0, 4)
    .map(([first, last]) => (first === last ? `${first + 1}` : `${first + 1} to ${last + 1}`));
  return `${rows.length === 1 ? "row" : "rows"} ${said.join(", ")}${runs.length > 4 ? " and more" : ""}`;
}

/** A rectangle of cells, rows and columns counted from 0. */
export interface Block {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** What two blocks share, or `undefined`. */
export function overlap(a: Block, b: Block): Block | undefined {
  const [row, column] = [Math.max(a.row, b.row), Math.max(a.column, b.column)];
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.min(a.column + a.columns, b.column + b.columns) - column;
  return rows > 0 && columns > 0 ? { row, column, rows, columns } : undefined;
}

/** Every row, or column, that the blocks cover, in order. */
export function covered(blocks: readonly Block[], along: "row" | "column"): number[] {
  const size = along === "row" ? "rows" : "columns";
  const all = new Set(
    blocks.flatMap((block) => Array.from({ length: block[size] }, (_, place) => block[along] + place)),
  );
  return [...all].sort((a, b) => a - b);
}

/** The address of a block: `B2:C40`, or `B2` for one cell. */
export function blockAddress({ row, column, rows, columns }: Block): string {
  const first = cellAddress(row, column);
  return rows === 1 && columns === 1 ? first : `${first}:${cellAddress(row + rows - 1, column + columns - 1)}`;
}

/** A block of a sheet, as the host has it. */
export const rangeOf = (sheet: Excel.Worksheet, { row, column, rows, columns }: Block): Excel.Range =>
  sheet.getRangeByIndexes(row, column, rows, columns);
