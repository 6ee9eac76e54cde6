/**
 * The value of a table at x, by a straight line between the neighbouring rows.
 *
 * @param rows ascending x of the table's rows
 * @param values one for each row
 * @returns `undefined` outside the table, or when x is no number
 * @example interpolated([0, 10], [1, 2], 5) // 1.5
 */
export function interpolated(rows: readonly number[], values: readonly number[], x: number): number | undefined {
  const upper = rows.findIndex((row) => x <= row);
  const [rowAbove, above] = [rows[upper], values[upper]];
  if (rowAbove === x || rowAbove === undefined || above === undefined) return above;
  const [rowBelow, below] = [rows[upper - 1], values[upper - 1]];
  if (rowBelow === undefined || below === undefined) return undefined;
  return below + ((above - below) * (x - rowBelow)) / (rowAbove - rowBelow);
}
