import { type SheetTool } from "../next-thing";
import { inExcel } from "../workbook";

/** A sheet that the pane made, as its cells stand, from A1 on. */
export interface OwnSheet {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly kind: SheetTool;
  readonly cells: readonly (readonly unknown[])[];
}

/** No sheet of ours is larger. */
const reach = { rows: 120, columns: 9 };

/** How a sheet of ours is known: by its first cell that it could be one, and by its cells which one it is. */
export interface Known {
  readonly mayBe: (title: unknown) => boolean;
  readonly kindOf: (cells: OwnSheet["cells"]) => SheetTool | undefined;
}

/** The sheet in view (or the one named) if it is one of ours; its first cell is looked at before the others. */
export const readOwnSheet = ({ mayBe, kindOf }: Known, id?: string): Promise<OwnSheet | undefined> =>
  inExcel(async (context) => {
    const { worksheets } = context.workbook;
    const sheet = (id === undefined ? worksheets.getActiveWorksheet() : worksheets.getItem(id)).load("id,name");
    const first = sheet.getRangeByIndexes(0, 0, 1, 1).load("values");
    await context.sync();
    if (!mayBe((first.values as unknown[][])[0]?.[0])) return undefined;
    const range = sheet.getRangeByIndexes(0, 0, reach.rows, reach.columns).load("values");
    await context.sync();
    const cells = range.values as unknown[][];
    const kind = kindOf(cells);
    return kind === undefined ? undefined : { sheetId: sheet.id, sheetName: sheet.name, kind, cells };
  }, { canWait: true });
