import { inEngineUnit, isReadable, measureOf, numberCell, Refusal, type WrittenUnit } from "../src/index";

/** An error value in an input cell goes on as that error: the host's #N/A stays #N/A. */
export class CellError extends Error {
  readonly code: string;
  constructor(code: string) {
    super(`an input cell holds ${code}: mend that cell first`);
    this.name = "CellError";
    this.code = code;
  }
}

/** The bare content of a cell: data-type objects unwrapped, errors thrown, every kind of blank as `undefined`. */
export function content(cell: unknown): string | number | boolean | undefined {
  switch (typeof cell) {
    case "number":
    case "boolean":
      return cell;
    case "string": {
      const text = cell.trim();
      return text === "" ? undefined : text;
    }
    case "object":
      return cell === null ? undefined : unwrapped(cell);
    default:
      return undefined;
  }
}

interface DataTypeCell {
  readonly type?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
  readonly code?: unknown;
}

function unwrapped(cell: DataTypeCell): string | number | boolean | undefined {
  if (cell.type === "Error" || cell.basicType === "Error") {
    throw new CellError(typeof cell.basicValue === "string" ? cell.basicValue : "#VALUE!");
  }
  if (cell instanceof CustomFunctions.Error) throw new CellError(cell.code);
  if (typeof cell.basicValue === "object") return undefined;
  return content(cell.basicValue);
}

/**
 * A number, or `undefined` where nothing was measured: read as the log reader reads it, so that a computed column takes
 * what stands in the log. "1,8" and "1.8 mS" are 1.8; "1,800" could be 18 hundred, and is refused with what it says.
 *
 * @param unit of the argument; a cell that names another unit of the same quantity is converted, any other is refused
 */
export function numberIn(cell: unknown, called: string, unit = ""): number | undefined {
  if (typeof cell === "number") return cell;
  const value = content(cell);
  if (value === undefined || typeof value === "number") return value;
  const read = isAmbiguous(value) ? { reason: "" } : numberCell(value, false);
  if (read === undefined) return undefined;
  const found = "value" in read && read.names === undefined ? inUnit(read, unit) : undefined;
  if (found !== undefined) return found;
  throw new Refusal("not-a-number", { quantity: called, given: String(value) });
}

/** One comma before three digits: thousands to one grower, decimals to the next. */
const isAmbiguous = (value: string | boolean): boolean =>
  typeof value === "string" && /^\D*\d{1,3},\d{3}(?!\d)/.test(value);

/** The figure in the argument's unit; `undefined` when the cell names a unit that is not one of this quantity. */
function inUnit(
  { value, unit }: { readonly value: number; readonly unit?: WrittenUnit },
  wanted: string,
): number | undefined {
  if (unit === undefined || unit === wanted) return value;
  const measure = isEngineUnit(wanted) ? measureOf(wanted) : undefined;
  return measure !== undefined && isReadable(unit) && measureOf(unit) === measure
    ? inEngineUnit(value, unit)
    : undefined;
}

/** The units that the engine's own formulas take. */
const isEngineUnit = (unit: string): unit is "mS/cm" | "L" | "C" | "%" => ["mS/cm", "L", "C", "%"].includes(unit);
