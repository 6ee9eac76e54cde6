import { Refusal } from "../src/index";

/** Words growers write where a reading was not taken. */
const notMeasured = new Set(["-", "--", "–", "—", "n/a", "na", "nan", "none"]);

/** A number typed as text, as the host's own arithmetic would read it; "1,8" is not one, for it could be 18 hundred. */
const plainNumber = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

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

/** A number, or `undefined` for a blank; text that is not a plain number is refused with what it says. */
export function numberIn(cell: unknown, called: string): number | undefined {
  if (typeof cell === "number") return cell;
  const value = content(cell);
  if (value === undefined || typeof value === "number") return value;
  if (typeof value === "string") {
    if (notMeasured.has(value.toLowerCase())) return undefined;
    if (plainNumber.test(value)) return Number(value);
  }
  throw new Refusal("not-a-number", { quantity: called, given: String(value) });
}
