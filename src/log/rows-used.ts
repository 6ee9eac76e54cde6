import { type LogReading } from "./reading";

/**
 * How many rows of the grid are used: a reading of feed and runoff from rows of their own counts for two.
 *
 * @example rowsUsed(readLog({ cells: [["Date", "Runoff EC"], [45383, 2.4]] })) // 1
 */
export const rowsUsed = ({ rows }: Pick<LogReading, "rows">): number =>
  rows.length + rows.filter(({ feedRow }) => feedRow !== undefined).length;
