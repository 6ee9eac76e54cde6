import { mixSheet } from "../../taskpane/templates/mix-sheet";
import { type WorkbookSpec } from "../xlsx/spec";
import { fromTemplate } from "./from-template";

/** A tank for the tomatoes in coir three days after their flush, mixed from four plain salts over a hard tap water. */
export const mixSheetWorkbook: WorkbookSpec = {
  title: "Tomatoes in coir: a recovery feed",
  names: [],
  sheets: [
    fromTemplate(mixSheet({ name: "Tomatoes", feedEc: 2.2, daysSinceFlush: 3, pourPh: 5.8 }), {
      "Water before any feed, EC (mS/cm)": [0.5],
      "Water in the tank (L)": [60],
      "Ca in the water (mg/L)": [48],
      "Mg in the water (mg/L)": [6],
      "Alkalinity of this water": [159],
      "Its unit, as the report prints it": ["mg/L HCO3"],
      "pH of this water now": [7.4],
      "Strength of the bottle (% by mass)": [30],
      "1 mL in 1 L adds (mS/cm)": [0.25],
      "EC of the mixed tank (mS/cm)": [2],
      "pH of the mixed tank": [5.7],
      // Share of each element by weight as labels of these salts give it: N, P2O5, K2O, Ca, Mg, S.
      "Feed 1": [0.4, 15.5, undefined, undefined, 19],
      "Feed 2": [0.2, 13, undefined, 46],
      "Feed 3": [0.1, undefined, 52, 34],
      "Feed 4": [0.25, undefined, undefined, undefined, undefined, 9.8, 12.9],
    }),
  ],
};
