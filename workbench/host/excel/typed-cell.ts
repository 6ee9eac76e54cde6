import type { Area } from "./area";
import { isUnbounded, mapCells } from "./area-maths";
import { HostError } from "./host-error";
import type { Entry, Scalar } from "./sheet-store";

/**
 * What an add-in writes, one entry a cell: a matrix of exactly the range's shape, or one value for all its cells.
 * `null` leaves a cell as it is.
 *
 * @throws {HostError} `InvalidArgument` on another shape or on something that is no cell value
 */
export function matrixFor(area: Area, given: unknown): (Scalar | undefined)[][] {
  if (isUnbounded(area)) throw new HostError("InvalidArgument", "whole rows and columns cannot be written");
  if (!Array.isArray(given)) {
    const value = scalar(given);
    return mapCells(area, () => value);
  }
  const rows = given as unknown[];
  const fits = rows.length === area.rowCount && rows.every((row) => Array.isArray(row) && row.length === area.columnCount);
  if (!fits) throw new HostError("InvalidArgument", `the values do not have the range's shape, ${area.rowCount} by ${area.columnCount}`);
  return (rows as unknown[][]).map((row) => row.map(scalar));
}

function scalar(given: unknown): Scalar | undefined {
  if (given === null) return undefined;
  if (typeof given === "string" || typeof given === "boolean") return given;
  if (typeof given === "number" && Number.isFinite(given)) return given;
  throw new HostError("InvalidArgument", `a ${typeof given} is no value for a cell`);
}

/**
 * Text as the host takes it in: `"=A1"` is a formula, `"2.4"` a number, `"true"` a truth value; an apostrophe in front, or the
 * text format, keeps it text. Dates stay text here, though the real host would read them.
 */
export function asEntered(value: Scalar | undefined, numberFormat = "General"): Entry | undefined {
  if (typeof value !== "string" || value === "") return value;
  if (value.startsWith("'")) return value.slice(1);
  if (numberFormat === "@") return value;
  if (value.startsWith("=") && value.length > 1) return { formula: value };
  if (/^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(value.trim())) return Number(value);
  if (/^(true|false)$/i.test(value)) return value.toLowerCase() === "true";
  return value;
}

/** As `matrixFor`, for texts such as number formats. */
export function textsFor(area: Area, given: unknown): (string | undefined)[][] {
  return matrixFor(area, given).map((row) => row.map((value) => (value === undefined ? undefined : String(value))));
}

