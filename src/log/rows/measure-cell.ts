import { inEngineUnit } from "../../cells/engine-unit";
import { checkMeasure, type Said } from "./measure-checks";
import { numberCell } from "../../cells/number-cell";
import { type Measure } from "../columns/measures";
import { quoted } from "../../cells/text";
import { type LogUnit, measureOf, type WrittenUnit } from "../../cells/units";

/** A column of readings: what it measures, in which unit, and the middle of its figures in the engine's unit. */
export interface MeasureColumn {
  readonly measure: Measure;
  readonly unit: LogUnit;
  readonly median: number | undefined;
  /** For a cell that says ppm by itself. */
  readonly ppmScale: number | undefined;
}

/** The reading in the engine's unit; a reason, with the value where it is used all the same; or nothing measured. */
export type MeasureCell = number | Said | undefined;

const thousandsUnits: ReadonlySet<LogUnit> = new Set<LogUnit>(["uS/cm", "mL"]);

/** Reads one cell of a column of readings. A figure that can only be another unit is never converted in silence. */
export function measureCell(cell: unknown, column: MeasureColumn, isDate: boolean): MeasureCell {
  if (typeof cell === "number" && Number.isFinite(cell)) {
    if (isDate)
      return {
        reason: "the sheet has turned this reading into a date: type it again as text, or with a decimal point",
      };
    return checkMeasure(inEngineUnit(cell, column.unit), cell, column);
  }
  const read = numberCell(cell, thousandsUnits.has(column.unit) || column.unit.startsWith("ppm"));
  if (read === undefined || "reason" in read) return read;
  if (read.names !== undefined && read.names !== column.measure)
    return { reason: `${quoted(cell)} says ${read.names}, and the column is ${column.measure}` };
  const unit = read.unit === undefined ? column.unit : ownUnit(read.unit, read.scale, column);
  if (unit === undefined) return { reason: `${quoted(cell)} is not in a unit of this column` };
  const checked = checkMeasure(inEngineUnit(read.value, unit), read.value, { ...column, unit });
  return typeof checked === "number" && read.doubt !== undefined ? { value: checked, reason: read.doubt } : checked;
}

/** The unit typed into the cell itself, when it measures what the column measures. */
function ownUnit(unit: WrittenUnit, scale: number | undefined, column: MeasureColumn): LogUnit | undefined {
  if (measureOf(unit) !== column.measure) return undefined;
  if (unit !== "ppm") return unit as LogUnit;
  const known = scale ?? column.ppmScale;
  return known === undefined ? undefined : `ppm ${known}`;
}
