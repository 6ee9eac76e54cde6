import { type Scalar } from "../check-values/check-file";
import { rawWorkbook } from "../workbench/files/raw-workbook";
import { type PlainFormula } from "./plain-formulas";

/** One call and the plain formula beside it, as they stand on the sheet. */
export interface PlainCall {
  readonly id: string;
  readonly args: PlainFormula["rows"][number];
  readonly at: readonly [row: number, column: number];
  /** The cell of the plain formula. */
  readonly cell: string;
  readonly typed: string;
  readonly top: number;
}

const formulaColumn = "L";
const firstLetter = "A".charCodeAt(0);
const letter = (column: number): string => String.fromCharCode(firstLetter + column);

/** Every call with its arguments in columns A, B, C ... from a row of its own on: a single value there, a series downwards. */
export function plainCalls(formulas: readonly PlainFormula[]): PlainCall[] {
  let top = 1;
  return formulas.flatMap(({ id, formula, rows, at = [1, 1] }) =>
    rows.map((args): PlainCall => {
      const call = { id, args, at, cell: `${formulaColumn}${top}`, typed: placed(formula, args, top), top };
      top += heightOf(args);
      return call;
    }),
  );
}

/** The formula with its letters, outside quotes, turned into the cells of this call. */
function placed(formula: string, args: PlainCall["args"], top: number): string {
  const address = (_: string, name: string, mark?: string, place?: string): string => {
    if (place !== undefined) return `${name}${top + Number(place) - 1}`;
    const length = heightOf([args[name.charCodeAt(0) - firstLetter] ?? ""]);
    return mark === "#" ? `${name}${top}:${name}${top + length - 1}` : `${name}${top}`;
  };
  const parts = formula.split(/("[^"]*")/);
  return parts.map((part) => (part.startsWith('"') ? part : part.replaceAll(/\b([A-H])(#|\.(\d+))?(?![\w(.])/g, address))).join("");
}

const heightOf = (args: PlainCall["args"]): number => Math.max(...args.map((arg) => (typeof arg === "object" ? arg.length : 1)));

/** The workbook that holds all of them, for another spreadsheet program to compute. */
export function plainWorkbook(calls: readonly PlainCall[]): Uint8Array {
  const rows = calls.flatMap(({ args, top, typed }) =>
    Array.from({ length: heightOf(args) }, (_, below) => {
      const cells = args.map((arg, column) => valueCell(`${letter(column)}${top + below}`, (typeof arg === "object" ? arg : [arg])[below]));
      const formula = below === 0 ? `<c r="${formulaColumn}${top}"><f>${escaped(typed)}</f></c>` : "";
      return `<row r="${top + below}">${cells.join("")}${formula}</row>`;
    }),
  );
  return rawWorkbook({ sheets: [{ name: "Plain", rows: rows.join("") }] });
}

function valueCell(at: string, value: Scalar | undefined): string {
  if (value === undefined) return "";
  if (typeof value === "number") return `<c r="${at}"><v>${value}</v></c>`;
  if (typeof value === "boolean") return `<c r="${at}" t="b"><v>${value ? 1 : 0}</v></c>`;
  return `<c r="${at}" t="inlineStr"><is><t>${escaped(value)}</t></is></c>`;
}

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
