import { ownSheetNote } from "../../src/index";
import { caution, gap, note, title } from "./lines";
import { meterLabels as labels } from "./meter/labels";
import { nowLines } from "./meter/now";
import { recordLines } from "./meter/record";
import { sheetTemplate, type SheetTemplate } from "./sheet-template";

/** The record of the meters: buffers and standard, what follows from them, when the next is due, and how it is done. */
export const meterSheet = (): SheetTemplate =>
  sheetTemplate({
    name: "Meter",
    lines: [
      title(labels.title),
      note(`${ownSheetNote} One line a calibration, written before anything is set. EC in mS/cm.`),
      ...nowLines,
      gap,
      ...recordLines,
      gap,
      caution("Nothing is done at a plant on the word of a meter that is not good here: no flush, no acid, no drench."),
      caution(
        "Buffers, storage solution and cleaner: off the skin, out of the eyes, away from acids, feeds and children.",
      ),
    ],
    widths: [28, 17, 10, 11, 10, 11, 6, 11, 13, 20, 15, 12, 6, 12, 18, 13],
    leastHeight: 26,
    landscape: true,
  });
