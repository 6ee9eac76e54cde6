import { inExcel, SheetProblem } from "../workbook";
import { cellAddress } from "./address";

export interface Picture {
  readonly svg: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** For those who do not see it. */
  readonly description: string;
}

/** A sheet measures in points, a picture in pixels at 96 to the inch. */
const pointsAPixel = 0.75;

/** A free column of the host's usual width is left between the log and the picture. */
const gapPoints = 48;

/** The name under which the pane finds its own picture again. */
const pictureName = "Runoff Ledger timeline";

/**
 * Places the timeline to the right of all that is filled on the sheet, so that it covers no filled cell; an earlier
 * timeline of the pane is replaced. Answers the address of the cell that it begins at.
 */
export const placePicture = (sheetId: string, picture: Picture): Promise<string> =>
  inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId).load("name");
    sheet.protection.load("protected");
    const used = sheet.getUsedRangeOrNullObject(false).load("left,top,width,columnIndex,columnCount,rowIndex");
    const shapes = sheet.shapes.load("items/name");
    await context.sync();
    if (sheet.protection.protected) throw new SheetProblem("protected");
    for (const shape of shapes.items) if (shape.name === pictureName) shape.delete();
    const shape = sheet.shapes.addSvg(picture.svg);
    shape.name = pictureName;
    shape.altTextTitle = pictureName;
    shape.altTextDescription = picture.description;
    shape.lockAspectRatio = false;
    shape.left = used.isNullObject ? 0 : used.left + used.width + gapPoints;
    shape.top = used.isNullObject ? 0 : used.top;
    shape.width = picture.width * pointsAPixel;
    shape.height = picture.height * pointsAPixel;
    await context.sync();
    return used.isNullObject ? "A1" : cellAddress(used.rowIndex, used.columnIndex + used.columnCount + 1);
  });
