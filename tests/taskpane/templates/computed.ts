import { columnLetters } from "../../../src/index";
import { type SheetTemplate } from "../../../taskpane/templates/sheet-template";
import type { BookCell } from "../../../workbench/book";
import { computeBook } from "../../../workbench/engine/compute";
import type { CellValue } from "../../../workbench/host/functions-host";
import { loadBundle } from "../../../workbench/host/load-bundle";

const { host, metadata } = loadBundle();

/** What a person reads on the sheet: an answer beside its label, or a cell by its address. */
export interface Sheet {
  readonly beside: (label: string) => CellValue;
  readonly at: (address: string) => CellValue;
}

/** A template as the host would compute it, after some boxes were filled in: by label, or by address. */
export async function computed({ name, rows }: SheetTemplate, typed: Readonly<Record<string, string | number | undefined>> = {}): Promise<Sheet> {
  const labels = new Map(rows.flatMap((row, r) => (typeof row[0]?.value === "string" ? [[row[0].value, `B${r + 1}`] as const] : [])));
  const cells = new Map<string, BookCell>();
  rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      const address = `${columnLetters(c)}${r + 1}`;
      if (cell?.formula !== undefined) cells.set(address, { formula: cell.formula });
      else if (cell?.value !== undefined) cells.set(address, { value: cell.value });
    });
  });
  for (const [where, value] of Object.entries(typed)) cells.set(labels.get(where) ?? where, { value });
  const [sheet] = await computeBook({ sheets: [{ name, cells, tables: [] }], names: [], date1904: false }, host, metadata);
  const at = (address: string): CellValue => sheet?.values.get(address) ?? cells.get(address)?.value;
  return {
    at,
    beside: (label) => {
      const address = labels.get(label);
      if (address === undefined) throw new Error(`no label ${label}`);
      return at(address);
    },
  };
}

/** The row of a label, counted from 1. */
export function rowOf({ rows }: SheetTemplate, label: string): number {
  const row = rows.findIndex(([first]) => first?.value === label);
  if (row < 0) throw new Error(`no label ${label}`);
  return row + 1;
}
