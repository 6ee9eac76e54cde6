import { logUnits, type NamedLogUnit } from "../../cells/log-unit";
import { type LogUnit, measureOf } from "../../cells/units";
import { Refusal } from "../../refusal";
import { type Measure } from "../columns/measures";
import { type MeasureColumn, measureCell } from "./measure-cell";

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
  const column = columns[unit];
  if (cell === undefined || (cell === 0 && column.measure !== "volume")) return undefined;
  const found = measureCell(cell, column, false);
  if (found === undefined || typeof found === "number") return found;
  if (found.value !== undefined) return found.value;
  throw new Refusal("implausible", { quantity: column.measure, given: String(cell), next: found.reason });
}

/** A column in each unit, of which nothing else is known. */
const columns = Object.fromEntries(logUnits.map((unit) => [unit, columnIn(unit)])) as Readonly<
  Record<NamedLogUnit, MeasureColumn>
>;

function columnIn(named: NamedLogUnit): MeasureColumn {
  const unit: LogUnit = named === "pH" ? "" : named;
  const ppmScale = unit.startsWith("ppm ") ? Number(unit.slice("ppm ".length)) : undefined;
  return { measure: measureIn(named), unit, median: undefined, ppmScale };
}

function measureIn(unit: NamedLogUnit): Measure {
  if (unit === "pH") return "pH";
  return (unit.startsWith("ppm ") ? undefined : measureOf(unit as LogUnit as "mS/cm")) ?? "EC";
}
