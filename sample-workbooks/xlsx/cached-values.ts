import { type Book, type ComputedSheet } from "../../workbench/book";
import { numberFormats, styleOf } from "./style-table";
import { type Cell, type SheetSpec, type WorkbookSpec } from "./spec";

/** The workbook as the workbench's calculation takes it. */
export function bookOf({ sheets, names }: WorkbookSpec): Book {
  return {
    sheets: sheets.map(({ name, cells, tables = [] }) => ({
      name,
      cells: new Map([...cells].filter(isFilled).map(([at, cell]) => [at, bookCell(cell)])),
      tables: tables.map((table) => ({ name: table.name, ref: table.ref, columns: table.columns.map((column) => column.name) })),
    })),
    names,
    date1904: false,
  };
}

/** A cell with a look but nothing in it is empty, and a formula may spill into it. */
const isFilled = ([, { value, formula }]: readonly [string, Cell]): boolean => value !== undefined || formula !== undefined;

function bookCell({ value, formula, style }: Cell): { value?: Cell["value"]; formula?: string; numberFormat?: string } {
  const numberFormat = style === undefined ? undefined : numberFormats[styleOf(style).format ?? "general"].code?.replaceAll("\\", "");
  return {
    ...(value === undefined ? {} : { value }),
    ...(formula === undefined ? {} : { formula }),
    ...(numberFormat === undefined ? {} : { numberFormat }),
  };
}

/** The workbook with the calculation's true values beside its formulas, and with the cells that they spilled into. */
export function withCachedValues(workbook: WorkbookSpec, computed: readonly ComputedSheet[]): WorkbookSpec {
  return { ...workbook, sheets: workbook.sheets.map((sheet) => filled(sheet, computed.find(({ name }) => name === sheet.name))) };
}

function filled(sheet: SheetSpec, computed: ComputedSheet | undefined): SheetSpec {
  if (computed === undefined) throw new Error(`the sheet ${sheet.name} was not calculated`);
  const cells = new Map(sheet.cells);
  for (const [at, value] of computed.values) {
    const cell = cells.get(at) ?? {};
    const spill = computed.spills.get(at);
    cells.set(at, { ...cell, ...(value === undefined ? {} : { value }), ...(spill === undefined ? {} : { spill }) });
  }
  return { ...sheet, cells };
}
