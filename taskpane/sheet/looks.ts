import { type Block } from "./address";
import { rangeOf } from "./address";

/** How cells look before an action changes it: number formats, a bold top row, the widths of their columns. */
export interface Looks {
  readonly numberFormat: readonly (readonly unknown[])[];
  readonly bold: readonly boolean[];
  /** Points. */
  readonly widths: readonly number[];
}

/** Asks how a block looks; the answer is there after the next sync. */
export function askLooks(sheet: Excel.Worksheet, block: Block): () => Looks {
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
  });
}

/** Queues that a block looks as it did. */
export function putLooksBack(sheet: Excel.Worksheet, block: Block, { numberFormat, bold, widths }: Looks): void {
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
}

/** Queues that a block looks as an action wants it, its columns as wide as what they hold. */
export function dress(sheet: Excel.Worksheet, block: Block, { numberFormat, boldTop }: Dress): void {
  const range = rangeOf(sheet, block);
  range.numberFormat = numberFormat as string[][];
  if (boldTop) rangeOf(sheet, { ...block, rows: 1 }).format.font.bold = true;
  range.format.autofitColumns();
}
