import { isInRange, parseRange } from "hucre";
import type { Book, ComputedSheet } from "./book";
import type { CellValue } from "./host/functions-host";

const valueWidth = 40;
/** As many digits as a sheet shows; 0.2999999999999998 is 0.3 to a reader, and exact in the JSON. */
const shownDigits = 10;

/** One JSON object: sheet name, cell address, value. */
export function asJson(computed: readonly ComputedSheet[]): string {
  const sheets = computed.map(({ name, values }) => [name, Object.fromEntries(values)] as const);
  return `${JSON.stringify(Object.fromEntries(sheets), null, 2)}\n`;
}

/** What a person reads: each computed cell, its value, and the formula it comes from. */
export function asTable(book: Book, computed: readonly ComputedSheet[]): string {
  const sheets = computed.map((sheet, n) => sheetLines(sheet, book.sheets[n]?.cells ?? new Map<string, { formula?: string }>()));
  return `${[...sheets.flat(), total(computed)].join("\n")}\n`;
}

function sheetLines({ name, values, spills }: ComputedSheet, cells: ReadonlyMap<string, { readonly formula?: string }>): string[] {
  if (values.size === 0) return [];
  const lines = [...values].map(([address, value]) => {
    const formula = cells.get(address)?.formula;
    const origin = formula === undefined ? `part of ${anchorOf(address, spills)}` : `=${oneLine(formula)}`;
    return `  ${address.padEnd(7)} ${shown(value).padEnd(valueWidth)} ${origin}${reason(value)}`.trimEnd();
  });
  return [name, ...lines, ""];
}

function shown(value: CellValue): string {
  if (value === undefined || value === "") return "(empty)";
  if (typeof value === "object") return value.error;
  if (typeof value === "number") return String(Number(value.toPrecision(shownDigits)));
  return typeof value === "boolean" ? String(value).toUpperCase() : oneLine(value);
}

function reason(value: CellValue): string {
  return typeof value === "object" && value.reason !== undefined ? `\n          ${oneLine(value.reason)}` : "";
}

function anchorOf(address: string, spills: ReadonlyMap<string, string>): string {
  const { startRow, startCol } = parseRange(address);
  const holds = ([, range]: readonly [string, string]): boolean => isInRange(startRow, startCol, parseRange(range));
  return [...spills].find(holds)?.[0] ?? address;
}

function oneLine(text: string): string {
  return text.replaceAll(/\s+/gu, " ");
}

function total(computed: readonly ComputedSheet[]): string {
  const values = computed.flatMap((sheet) => [...sheet.values.values()]);
  const errors = values.filter((value) => typeof value === "object").length;
  return `${values.length} cells computed on ${computed.filter((sheet) => sheet.values.size > 0).length} sheets, ${errors} with an error`;
}
