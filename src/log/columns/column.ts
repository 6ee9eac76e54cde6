import { type BySide, type ColumnAnswer } from "../reading";
import { type ColumnHeader } from "./header-rows";
import { type Proposal } from "./propose";
import { type ColumnSample } from "./sample";

/** One column on its way: what its words and its cells say. */
export interface Column extends Proposal {
  readonly column: number;
  readonly header: ColumnHeader;
  readonly sample: ColumnSample;
  readonly answer: ColumnAnswer | undefined;
  /** Asked about even where its cells are words. */
  readonly insists?: boolean;
  /** Its rows take turns: input in some, runoff in others. */
  readonly bySide?: BySide;
  /** Its words say the side of each row. */
  readonly saysSide?: boolean;
}
