import { findUnit, type WrittenUnit } from "../../cells/units";

const dateFormat = /(?:^|[^a-z])(?:d{1,4}|y{2,4})(?:[^a-z]|$)/i;

/** Whether a number format shows dates; what stands in quotes or brackets is not part of the code. */
export const isDateFormat = (format: string | undefined): boolean =>
  format !== undefined && dateFormat.test(format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, " "));

/** The unit that a number format writes behind the figure: `0.0 "mS/cm"`. */
export function formatUnit(format: string | undefined): WrittenUnit | undefined {
  if (format === undefined || format === "" || format === "General" || isDateFormat(format)) return undefined;
  const shown = [...format.matchAll(/"([^"]*)"|\\(.)/g)].map((found) => found[1] ?? found[2] ?? "").join("");
  return findUnit(format.includes("%") ? "%" : shown).unit;
}
