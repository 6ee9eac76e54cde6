import { cellRef, parseRange, type Cell, type Sheet, type Workbook } from "hucre";
import { readXlsx as readWorkbook } from "hucre/xlsx";
import type { Book, BookCell, BookName, BookSheet, BookTable } from "../book";
import { asTyped } from "../engine/formula-text";
import type { CellValue } from "../host/functions-host";
import { FileProblem, messageOf } from "./file-problem";
import { keptTexts } from "./kept-texts";
import { openPackage } from "./open-package";
import { sheetLooks } from "./sheet-looks";
import { checkWhole, sheetParts } from "./sheet-parts";

const millisecondsPerDay = 86_400_000;
/** The host takes no longer ones. */
const longestFormula = 8192;
/** A bench a sheet for a whole nursery. */
const mostSheets = 1000;

/** Reads an .xlsx: typed values, formulas as a person would type them with the value kept beside each, tables and names. */
export async function readXlsx(bytes: Uint8Array): Promise<Book> {
  const parts = openPackage(bytes);
  checkWhole(parts);
  const places = sheetParts(parts);
  const names = [...places.keys()];
  if (names.length > mostSheets) throw new FileProblem(`it has ${names.length} sheets, more than ${mostSheets}: it is not opened`);
  if (names.includes("")) throw new FileProblem("it is damaged: a sheet of it has no name");
  const workbook = await parsed(bytes, names);
  const date1904 = workbook.dateSystem === "1904";
  const shift = workbook.sheets.some(hasSharedFormula) ? (await import("./shared-formula")).shiftedFormula : undefined;
  const sheets = workbook.sheets.map((sheet) => ({
    ...bookSheet(sheet, date1904, shift), kept: keptTexts(parts, places.get(sheet.name) ?? ""),
  }));
  return { sheets, names: (workbook.namedRanges ?? []).flatMap(bookName), date1904 };
}

async function parsed(bytes: Uint8Array, sheets: string[]): Promise<Workbook> {
  try {
    return await readWorkbook(bytes, { readStyles: true, sheets });
  } catch (problem) {
    const says = messageOf(problem);
    if (/over the \d+ limit/u.test(says)) throw new FileProblem("a sheet of it spans far more cells than any log: it is not opened");
    throw new FileProblem(`it is damaged: ${says}`);
  }
}

/** How a formula reads in another cell; only files that share formulas need it, and with it the formula engine. */
type Shift = (formula: string, rows: number, columns: number) => string;

function hasSharedFormula({ cells }: Sheet): boolean {
  return [...(cells?.values() ?? [])].some(({ formulaSharedIndex }) => formulaSharedIndex !== undefined);
}

function bookSheet(sheet: Sheet, date1904: boolean, shift: Shift | undefined): BookSheet {
  const spilled = spilledCells(sheet);
  const shared: SharedFormulas = { shift, first: new Map() };
  const cells = new Map<string, BookCell>();
  for (const [row, values] of sheet.rows.entries()) {
    for (const [column, raw] of values.entries()) {
      const address = cellRef(row, column);
      const detail = sheet.cells?.get(`${row},${column}`);
      const value = spilled.has(address) ? undefined : cellValue(raw, detail, date1904);
      const formula = formulaOf(detail, row, column, shared);
      if ((formula?.length ?? 0) > longestFormula) {
        throw new FileProblem(`its cell ${address} holds a formula of more than ${longestFormula} letters, which no sheet takes`);
      }
      const numberFormat = detail?.style?.numFmt;
      if (value === undefined && formula === undefined) continue;
      cells.set(address, {
        ...(value === undefined ? {} : { value }),
        ...(formula === undefined ? {} : { formula, ...fixedTo(detail, address) }),
        ...(numberFormat === undefined ? {} : { numberFormat }),
      });
    }
  }
  const hiddenRows = new Set([...(sheet.rowDefs ?? [])].filter(([, { hidden }]) => hidden === true).map(([row]) => row));
  return { name: sheet.name, cells, tables: bookTables(sheet), hiddenRows, looks: sheetLooks(sheet) };
}

/** What lies in the range of an array formula, its first cell apart, is the formula's own answer and not typed by anybody. */
function spilledCells({ cells, rows }: Sheet): Set<string> {
  const spilled = new Set<string>();
  for (const { formula, formulaType, formulaRef } of cells?.values() ?? []) {
    if (formula === undefined || formulaType !== "array" || formulaRef === undefined) continue;
    const { startRow, endRow, startCol, endCol } = parseRange(formulaRef);
    for (let row = startRow; row <= Math.min(endRow, rows.length - 1); row += 1) {
      const last = Math.min(endCol, (rows[row]?.length ?? 0) - 1);
      for (let column = startCol; column <= last; column += 1) spilled.add(cellRef(row, column));
    }
    spilled.delete(cellRef(startRow, startCol));
  }
  return spilled;
}

function cellValue(raw: Cell["value"], detail: Cell | undefined, date1904: boolean): CellValue {
  if (raw === null) return undefined;
  if (raw instanceof Date) return serialOf(raw, date1904);
  return detail?.type === "error" ? { error: String(raw) } : raw;
}

/** The reader turns serial numbers into dates; this is the way back, to the millisecond. */
function serialOf(date: Date, date1904: boolean): number {
  const dayOne = date1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, date.getTime() < Date.UTC(1900, 2, 1) ? 31 : 30);
  return (date.getTime() - dayOne) / millisecondsPerDay;
}

interface SharedFormulas {
  readonly shift: Shift | undefined;
  readonly first: Map<number, { readonly formula: string; readonly row: number; readonly column: number }>;
}

function formulaOf(detail: Cell | undefined, row: number, column: number, shared: SharedFormulas): string | undefined {
  if (detail?.formula === undefined) return undefined;
  const { formula, formulaSharedIndex: index } = detail;
  if (formula !== "") {
    if (index !== undefined) shared.first.set(index, { formula, row, column });
    return asTyped(formula);
  }
  const first = index === undefined ? undefined : shared.first.get(index);
  if (first === undefined || shared.shift === undefined) return undefined;
  return asTyped(shared.shift(first.formula, row - first.row, column - first.column));
}

/** Only a formula marked dynamic spills freely; all others are held to one cell, or to the range of their array. */
function fixedTo(detail: Cell | undefined, address: string): { fixedTo?: string } {
  if (detail?.formulaDynamic === true) return {};
  return { fixedTo: detail?.formulaType === "array" ? (detail.formulaRef ?? address) : address };
}

function bookTables({ tables = [] }: Sheet): BookTable[] {
  return tables.flatMap(({ name, displayName, range, columns, showTotalRow }) =>
    range === undefined
      ? []
      : [{ name: displayName ?? name, ref: range, columns: columns.map((column) => unescaped(column.name)), hasTotals: showTotalRow === true }],
  );
}

/** A line break in a header is written `_x000a_`. */
function unescaped(name: string): string {
  return name.replaceAll(/_x([\da-f]{4})_/giu, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

/** Print areas and filter ranges are kept by the host as names too, under this mark. */
function bookName({ name, range, scope }: { name: string; range: string; scope?: string }): BookName[] {
  if (name.startsWith("_xlnm.")) return [];
  return [{ name, refersTo: asTyped(range), ...(scope === undefined ? {} : { onlyOn: scope }) }];
}
