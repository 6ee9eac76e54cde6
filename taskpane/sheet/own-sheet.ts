import { inExcel } from "../workbook";

/** A sheet that the pane made, as its cells stand, from A1 on. */
export interface OwnSheet {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly cells: readonly (readonly unknown[])[];
}

/** No sheet of ours is larger. */
const reach = { rows: 120, columns: 9 };

/**
 * The sheet in view (or the one named) if `isOurs` says so of its cells; its first cell is looked at before the others.
 */
export const readOwnSheet = (
  isOurs: (cells: OwnSheet["cells"]) => boolean,
  mayBe: (title: unknown) => boolean,
  id?: string,
): Promise<OwnSheet | undefined> =>
  inExcel(
    async (context) => {
      const { worksheets } = context.workbook;
      const sheet = (id === undefined ? worksheets.getActiveWorksheet() : worksheets.getItem(id)).load("id,name");
      const first = sheet.getRangeByIndexes(0, 0, 1, 1).load("values");
      await context.sync();
      if (!mayBe((first.values as unknown[][])[0]?.[0])) return undefined;
      const range = sheet.getRangeByIndexes(0, 0, reach.rows, reach.columns).load("values");
      await context.sync();
      const cells = range.values as unknown[][];
      return isOurs(cells) ? { sheetId: sheet.id, sheetName: sheet.name, cells } : undefined;
    },
    { canWait: true },
  );
