import { type ColumnHeader, type Header } from "../columns/header-rows";
import { type CellProblem, type ColumnReading, type LogGrid, type SetAside } from "../reading";
import { type Draft } from "./draft";
import { type repeatFinder } from "./repeats";
import { type RowReader } from "./row-reader";
import { type Above } from "./undated";

/** A log whose columns are known, ready to be read row by row. */
export interface BodySource {
  readonly grid: LogGrid;
  readonly header: Header | undefined;
  readonly headers: readonly ColumnHeader[];
  readonly columns: readonly ColumnReading[];
  readonly reader: RowReader;
}

/** What has been read so far, from the top of the log down. */
export interface BodyState {
  readonly rows: Draft[];
  readonly setAside: SetAside[];
  readonly problems: CellProblem[];
  readonly repeats: ReturnType<typeof repeatFinder>;
  blankRows: number;
  /** The vessel named by a heading over its rows. */
  heading: string | undefined;
  /** The row of readings above. */
  above: Above | undefined;
  /** Whether another table has begun. */
  ended: boolean;
}
