import { plain } from "../../cells/text";
import { type Entry } from "./entry";

/** Figures that growers write into notes: of the water, which has no column of its own in most logs. */
const figures = {
  alkalinity: /\b(?:alkalinity|alkalinitat|alcalinidad|alcalinite|alkaliniteit|caco3)\D{0,12}(\d{1,4}(?:\.\d+)?)/,
  "water EC": /\bwater(?:s own|s)? (?:ec|at|of)(?: ec)?\D{0,6}(\d(?:\.\d+)?)(?! ?(?:l|liters?|litres?|ml|gal)\b)/,
} as const;

/** The latest such figure that any note tells. */
export function figureIn(entries: readonly Entry[], name: keyof typeof figures): number | undefined {
  for (let at = entries.length - 1; at >= 0; at--) {
    const notes = entries[at]?.notes;
    const [, found] = notes === undefined ? [] : (figures[name].exec(plain(notes).replace(/['’]/g, "")) ?? []);
    if (found !== undefined) return Number(found);
  }
  return undefined;
}
