import { inExcel, offers, SheetProblem, writingInExcel } from "../workbook";
import { cellAddress } from "./address";
import { writableSheet } from "./done";
import { wholly } from "./wholly";

export interface Picture {
  /** A PNG in base64, without the words before it. */
  readonly png: string;
  /** Pixels as it is to be seen. */
  readonly width: number;
  readonly height: number;
  /** For those who do not see it. */
  readonly description: string;
}

/** A sheet measures in points, a picture in pixels at 96 to the inch. */
const pointsAPixel = 0.75;

/** A free column of the host's usual width is left between the log and the picture. */
const gapPoints = 48;

/** The part of the host's interface that tells where a range lies, in points. */
const placeSet = "1.10";

/** The name under which the pane finds its own picture again. */
const pictureName = "Runoff Ledger timeline";

/** Where a picture was placed. */
export interface Placed {
  /** The cell that it begins at. */
  readonly address: string;
  /** An earlier picture of the pane that could not be removed. */
  readonly earlierStays: boolean;
}

/**
 * Places the timeline to the right of all that is filled on the sheet, so that it covers no filled cell, and shows it;
 * an earlier timeline of the pane is removed once the new one stands.
 */
export const placePicture = (sheetId: string, picture: Picture): Promise<Placed> =>
  writingInExcel(async (context) => {
    if (!offers(placeSet)) throw new SheetProblem("not offered");
    const sheet = await writableSheet(context, sheetId);
    const used = sheet.getUsedRangeOrNullObject(false).load("left,top,width,columnIndex,columnCount,rowIndex");
    const all = await allShapes(context, sheet);
    const before = all.filter(isOurs);
    const address = used.isNullObject ? "A1" : cellAddress(used.rowIndex, used.columnIndex + used.columnCount + 1);
    await wholly(context, {
      where: `the picture at ${address} of ${sheet.name}`,
      write: () => {
        addPicture(
          sheet,
          picture,
          used.isNullObject ? { left: 0, top: 0 } : { left: used.left + used.width + gapPoints, top: used.top },
        );
        sheet.getRange(address).select();
      },
      putBack: async (again) => {
        const ids = all.map(({ id }) => id);
        // It may have stopped before the new picture had its name.
        const added = (await allShapes(again, again.workbook.worksheets.getItem(sheetId))).filter(
          ({ id }) => !ids.includes(id),
        );
        for (const shape of added) if (isOurs(shape) || shape.type === "Image") shape.delete();
        await again.sync();
      },
    });
    return { address, earlierStays: !(await areRemoved(sheetId, before.map(({ id }) => id))) };
  });

async function allShapes(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<Excel.Shape[]> {
  const shapes = sheet.shapes.load("items/name,items/id,items/type");
  await context.sync();
  return shapes.items;
}

const isOurs = ({ name }: Excel.Shape): boolean => name === pictureName;

function addPicture(
  sheet: Excel.Worksheet,
  { png, description, width, height }: Picture,
  at: { readonly left: number; readonly top: number },
): void {
  const shape = sheet.shapes.addImage(png);
  shape.name = pictureName;
  shape.altTextTitle = pictureName;
  shape.altTextDescription = description;
  shape.lockAspectRatio = false;
  shape.left = at.left;
  shape.top = at.top;
  shape.width = width * pointsAPixel;
  shape.height = height * pointsAPixel;
}

/** Removes the pictures that were there; answers whether all are gone. */
async function areRemoved(sheetId: string, ids: readonly string[]): Promise<boolean> {
  if (ids.length === 0) return true;
  try {
    await inExcel(async (context) => {
      const there = await allShapes(context, context.workbook.worksheets.getItem(sheetId));
      for (const shape of there) if (ids.includes(shape.id)) shape.delete();
      await context.sync();
    });
    return true;
  } catch {
    return false;
  }
}
