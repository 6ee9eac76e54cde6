import { flushSheet } from "../../taskpane/templates/flush-sheet";
import { before, portions, water } from "../scenario/pepper-flush";
import { type WorkbookSpec } from "../xlsx/spec";
import { fromTemplate } from "./from-template";

/** 9 March 2026, 9 o'clock, in the spreadsheet's day count; the portions follow three quarters of an hour apart. */
const start = 46_090.375;
const minutes = (count: number): number => count / (24 * 60);

/** A pepper in peat in the middle of its flush: three portions poured, the fourth still to come. */
export const flushSheetWorkbook: WorkbookSpec = {
  title: "Pepper 4 in peat: a flush under way",
  names: [],
  sheets: [
    fromTemplate(flushSheet({ name: "Pepper 4", medium: "peat", day: start, runoffEc: before.ec, runoffPh: before.ph, feedEc: 1.9 }), {
      "Container (L)": [12],
      "EC of what you pour (mS/cm)": [water.ec],
      "before the flush": [start % 1],
      ...Object.fromEntries(
        portions.map(({ feedLitres, runoffPh, runoffEc }, i) => [`portion ${i + 1}`, [(start % 1) + minutes(45 * (i + 1)), feedLitres, runoffPh, runoffEc]]),
      ),
    }),
  ],
};
