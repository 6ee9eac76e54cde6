import { mixSheet } from "../../taskpane/templates/mix-sheet";
import { type WorkbookSpec } from "../xlsx/spec";
import { fromTemplate } from "./from-template";

/** A tank for the tomatoes in coir three days after their flush, mixed from four plain salts over a hard tap water. */
export const mixSheetWorkbook: WorkbookSpec = {
  title: "Tomatoes in coir: a recovery feed",
  names: [],
  sheets: [
    fromTemplate(mixSheet, {
      "Water before any feed, EC (mS/cm)": [0.5],
      "Water in the tank (L)": [60],
      "Feed at full strength, EC (mS/cm)": [2.2],
      "Days since the flush (days)": [3],
      "1 mL in 1 L adds (mS/cm)": [0.25],
      "EC in the tank now (mS/cm)": [2],
      "In the tank now (L)": [40],
      // Share of each element by weight as labels of these salts give it: N, P2O5, K2O, Ca, Mg, S.
      "Feed 1": [0.4, 15.5, undefined, undefined, 19],
      "Feed 2": [0.2, 13, undefined, 46],
      "Feed 3": [0.1, undefined, 52, 34],
      "Feed 4": [0.25, undefined, undefined, undefined, undefined, 9.8, 12.9],
      "Ca in the water (mg/L)": [48],
      "Mg in the water (mg/L)": [6],
      "Alkalinity (mg/L as CaCO3)": [130],
      "pH now": [7.2],
      "pH wanted": [5.8],
      Acid: ["phosphoric"],
      "Strength of the bottle (% by mass)": [30],
    }),
  ],
};
