import { type Accepts } from "../templates/sheet-template";
import { type Block, rangeOf } from "./address";
import { restrict } from "./restrict";

/** How cells look before an action changes it: number formats, a bold top row, the widths of their columns. */
export interface Looks {
  readonly numberFormat: readonly (readonly unknown[])[];
  readonly bold: readonly boolean[];
  /** Points. */
  readonly widths: readonly number[];
  /** Where no rule said what may be typed: there is none again once the action is taken back. */
  readonly unruled?: Block | undefined;
}

/** Asks how a block looks; the answer is there after the next sync. */
export function askLooks(sheet: Excel.Worksheet, block: Block, wanted?: Pick<Dress, "picks">): () => Looks {
  const ruled = wanted?.picks === undefined ? undefined : pickBlock(block, wanted.picks);
  const rules = ruled === undefined ? undefined : rangeOf(sheet, ruled).dataValidation.load("type");
  const range = rangeOf(sheet, block).load("numberFormat");
  const tops = Array.from({ length: block.columns }, (_, i) => {
    const { format } = rangeOf(sheet, { ...block, column: block.column + i, rows: 1, columns: 1 });
    format.load("columnWidth");
    format.font.load("bold");
    return format;
  });
  return () => ({
    numberFormat: range.numberFormat as unknown[][],
    bold: tops.map(({ font }) => font.bold),
    widths: tops.map(({ columnWidth }) => columnWidth),
    unruled: rules?.type === "None" ? ruled : undefined,
  });
}

/** Queues that a block looks as it did. */
export function putLooksBack(
  sheet: Excel.Worksheet,
  block: Block,
  { numberFormat, bold, widths, unruled }: Looks,
): void {
  if (unruled !== undefined) rangeOf(sheet, unruled).dataValidation.clear();
  rangeOf(sheet, block).numberFormat = numberFormat as unknown[][];
  for (const [i, wasBold] of bold.entries()) {
    const { format } = rangeOf(sheet, { ...block, column: block.column + i, rows: 1, columns: 1 });
    format.font.bold = wasBold;
    format.columnWidth = widths[i] ?? format.columnWidth;
  }
}

/** How an action wants a block to look. */
export interface Dress {
  readonly numberFormat: readonly (readonly string[])[];
  readonly boldTop: boolean;
  /** What is to be picked from in each column. */
  readonly picks?: Picks | undefined;
}

export interface Picks {
  readonly accepts: readonly (Accepts | undefined)[];
  /** How many rows below the block have the pick lists too, for what is written there later. */
  readonly ahead: number;
}

/** The pick lists of columns, if any has one. */
export const picksOf = (columns: readonly { readonly accepts?: Accepts }[], ahead: number): Picks | undefined =>
  columns.some(({ accepts }) => accepts !== undefined)
    ? { accepts: columns.map(({ accepts }) => accepts), ahead }
    : undefined;

const pickBlock = (block: Block, { ahead }: Picks): Block => ({
  ...block,
  row: block.row + 1,
  rows: block.rows - 1 + ahead,
});

/** Queues that a block looks as an action wants it, its columns as wide as what they hold. */
export function dress(sheet: Excel.Worksheet, block: Block, { numberFormat, boldTop, picks }: Dress): void {
  const range = rangeOf(sheet, block);
  range.numberFormat = numberFormat as string[][];
  if (boldTop) rangeOf(sheet, { ...block, rows: 1 }).format.font.bold = true;
  range.format.autofitColumns();
  picks?.accepts.forEach((accepts, i) => {
    if (accepts !== undefined)
      restrict(rangeOf(sheet, { ...pickBlock(block, picks), column: block.column + i, columns: 1 }), accepts);
  });
}
