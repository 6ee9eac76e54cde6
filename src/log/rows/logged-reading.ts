import { type NamedLogUnit } from "../../cells/log-unit";
import { type LogUnit, measureOf } from "../../cells/units";
import { Refusal } from "../../refusal";
import { type Measure } from "../columns/measures";
import { measureCell } from "./measure-cell";

/**
 * One reading as it stands in a log, in the engine's unit: mS/cm, pH, L, C or %.
 *
 * Feeds every column computed beside a log: what the reader of the log takes, they take, and what it leaves out they
 * refuse.
 *
 * Valid:    one cell by itself; the reader of the whole log also looks at the cell's neighbours
 * Source:   common practice; docs/log-sheets.md
 *
 * @param cell as it stands in the sheet
 * @param unit of its column
 * @returns `undefined` where nothing was measured: a blank, "n/a", 0 of anything but a volume
 * @throws {Refusal} `implausible` with the reason for which the reader leaves the cell out
 * @example loggedReading("1800 uS/cm", "mS/cm") // 1.8
 */
export function loggedReading(cell: string | number | boolean | undefined, unit: NamedLogUnit): number | undefined {
  const measure = measureIn(unit);
  if (cell === undefined || (cell === 0 && measure !== "volume")) return undefined;
  const columnUnit: LogUnit = unit === "pH" ? "" : unit;
  const scale = columnUnit.startsWith("ppm ") ? Number(columnUnit.slice("ppm ".length)) : undefined;
  const found = measureCell(cell, { measure, unit: columnUnit, median: undefined, ppmScale: scale }, false);
  if (found === undefined || typeof found === "number") return found;
  if (found.value !== undefined) return found.value;
  throw new Refusal("implausible", { quantity: measure, given: String(cell), next: found.reason });
}

function measureIn(unit: NamedLogUnit): Measure {
  if (unit === "pH") return "pH";
  return (unit.startsWith("ppm ") ? undefined : measureOf(unit as LogUnit as "mS/cm")) ?? "EC";
}
