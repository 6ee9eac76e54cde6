import { address } from "./xlsx/address";
import { type Cell, type SheetSpec } from "./xlsx/spec";
import { numberFormats, styleOf } from "./xlsx/style-table";

/** The typed part of a sheet as comma-separated text (RFC 4180): what a grower would export without the computed columns. */
export function csvOf({ cells, widths }: SheetSpec): string {
  const kept = widths.map((_, column) => column).filter((column) => cells.get(address({ row: 1, column }))?.formula === undefined);
  const lines: string[] = [];
  for (let row = 0; kept.some((column) => cells.has(address({ row, column }))); row++) {
    lines.push(kept.map((column) => field(cells.get(address({ row, column })))).join(","));
  }
  return `${lines.join("\r\n")}\r\n`;
}

function field({ value, style }: Cell = {}): string {
  if (value === undefined || typeof value === "object") return "";
  const dated = typeof value === "number" && style !== undefined && numberFormats[styleOf(style).format ?? "general"].id === numberFormats.date.id;
  const text = dated ? isoDay(value) : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Day 25569 of the sheet's count is 1 January 1970. */
const isoDay = (sheetDay: number): string => new Date((sheetDay - 25569) * 86_400_000).toISOString().slice(0, 10);
