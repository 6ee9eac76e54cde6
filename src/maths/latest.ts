/**
 * The latest values that rows tell, oldest first: they are looked for from the end, for a long log need not be read to
 * its start.
 *
 * @example latest([{ ec: 2 }, {}, { ec: 3 }, { ec: 4 }], 2, ({ ec }) => ec) // [3, 4]
 */
export function latest<Row, Value>(
  rows: readonly Row[],
  count: number,
  valueOf: (row: Row) => Value | undefined,
): Value[] {
  const found: Value[] = [];
  for (let at = rows.length - 1; at >= 0 && found.length < count; at--) {
    const row = rows[at];
    const value = row === undefined ? undefined : valueOf(row);
    if (value !== undefined) found.push(value);
  }
  return found.reverse();
}

/** The place of the last row that this is true of; -1 where it is of none. */
export function lastPlace<Row>(rows: readonly Row[], isSo: (row: Row) => boolean): number {
  for (let at = rows.length - 1; at >= 0; at--) {
    const row = rows[at];
    if (row !== undefined && isSo(row)) return at;
  }
  return -1;
}
