import { type CellValue } from "../../workbench/host/functions-host";
import { callsOurs, stored } from "./formula";
import { type SharedStrings } from "./shared-strings";
import { type Cell } from "./spec";
import { type CellStyles } from "./styles-part";
import { element, escaped } from "./xml";

/**
 * "host" writes formulas as the host stores them. "preview" is for programs that do not know our functions, to look at a
 * sheet with: their answers stand as plain values and ordinary formulas are stored plainly.
 */
export type Variant = "host" | "preview";

/** How cells are written, and the tables of their workbook that they refer to. */
export interface Writing {
  readonly variant: Variant;
  readonly strings: SharedStrings;
  readonly styles: CellStyles;
}

/** One <c> of a worksheet. A formula must come with its value: the host shows it until the functions are loaded. */
export function cellPart(at: string, cell: Cell, { variant, strings, styles }: Writing): string {
  const style = cell.style === undefined ? undefined : styles.numberOf(cell.style);
  const { formula, value } = cell;
  if (formula === undefined || (variant === "preview" && (callsOurs(formula) || cell.spill !== undefined))) {
    return typedCell({ r: at, s: style }, value, strings);
  }
  if (value === undefined) throw new Error(`the formula at ${at} has no cached value`);
  const dynamic = callsOurs(formula) || cell.spill !== undefined;
  const attributes = dynamic ? { t: "array", ref: cell.spill ?? at } : {};
  const { type, text } = cached(value);
  return element("c", { r: at, s: style, t: type, cm: dynamic ? 1 : undefined }, element("f", attributes, escaped(stored(formula))), `<v>${text}</v>`);
}

/** What stands in a cell without a formula. */
function typedCell(place: { r: string; s: number | undefined }, value: CellValue, strings: SharedStrings): string {
  if (value === undefined || value === "") return element("c", place);
  if (typeof value === "string") return element("c", { ...place, t: "s" }, element("v", {}, String(strings.numberOf(value))));
  const { type, text } = cached(value);
  return element("c", { ...place, t: type }, element("v", {}, text));
}

function cached(value: Exclude<CellValue, undefined>): { type: string | undefined; text: string } {
  switch (typeof value) {
    case "number":
      if (!Number.isFinite(value)) throw new Error(`${value} is no value of a cell`);
      return { type: undefined, text: String(value) };
    case "boolean":
      return { type: "b", text: value ? "1" : "0" };
    case "string":
      return { type: "str", text: escaped(value) };
    default:
      return { type: "e", text: value.error };
  }
}
