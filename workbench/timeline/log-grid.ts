import { cellRef, parseCellRef } from "hucre";
import { type LogGrid, logSheetsIn } from "../../src/index";
import { type Book, type BookCell, type BookSheet } from "../book";
import { type Area, areaCalled } from "../engine/areas";
import { FileProblem } from "../files/file-problem";

/** A part of a sheet as the log reader wants it, and where in the sheet it stands; rows and columns counted from 0. */
export interface PlacedGrid {
  readonly sheet: string;
  readonly grid: LogGrid & { readonly rowNumbers: readonly number[]; readonly columnNumbers: readonly number[] };
}

/** The cells of a sheet, or of a range of it, without its hidden rows. */
export function logGrid(book: Book, sheetName: string | undefined, range: string | undefined): PlacedGrid {
  const sheet = sheetName === undefined ? book.sheets[0] : book.sheets.find(({ name }) => name.toLowerCase() === sheetName.toLowerCase());
  if (sheet === undefined) throw new FileProblem(`there is no sheet ${sheetName ?? ""}; there is ${book.sheets.map(({ name }) => name).join(", ")}`);
  return gridOf(book, sheet, range);
}

/** The sheets of a book that hold logs, and that a person can see; where none does, its first sheet. */
export function logGrids(book: Book): readonly PlacedGrid[] {
  if (book.sheets.length === 1) return [logGrid(book, undefined, undefined)];
  const filled = book.sheets.filter(({ cells, looks }) => cells.size > 0 && looks?.isHidden !== true);
  const logs = logSheetsIn(filled.map((sheet) => ({ name: sheet.name, ...gridOf(book, sheet, undefined) })));
  return logs.length > 0 ? logs.map(({ sheet }) => sheet) : [logGrid(book, undefined, undefined)];
}

function gridOf(book: Book, sheet: BookSheet, range: string | undefined): PlacedGrid {
  const block = range === undefined ? filledBlock(sheet) : rangeBlock(range);
  const all = count(block.startRow, block.endRow);
  const rowNumbers = all.filter((row) => sheet.hiddenRows?.has(row) !== true);
  const columnNumbers = count(block.startCol, block.endCol);
  const isHidden = (_: number, place: number): boolean => sheet.looks?.hiddenColumns.has(columnNumbers[place] ?? 0) === true;
  const cells = rowNumbers.map((row) => columnNumbers.map((column) => sheet.cells.get(cellRef(row, column))));
  return {
    sheet: sheet.name,
    grid: {
      cells: cells.map((row) => row.map(content)),
      numberFormats: cells.map((row) => row.map((cell) => cell?.numberFormat ?? "General")),
      date1904: book.date1904,
      rowNumbers,
      columnNumbers,
      hiddenRows: all.length - rowNumbers.length,
      hiddenColumns: columnNumbers.map((_, place) => place).filter(isHidden),
    },
  };
}

const count = (first: number, last: number): number[] => Array.from({ length: Math.max(0, last - first + 1) }, (_, place) => first + place);

function filledBlock({ cells }: BookSheet): Area {
  const places = [...cells.keys()].map(parseCellRef);
  if (places.length === 0) throw new FileProblem("the sheet is empty");
  let [endRow, endCol] = [0, 0];
  for (const { row, col } of places) [endRow, endCol] = [Math.max(endRow, row), Math.max(endCol, col)];
  return { startRow: 0, startCol: 0, endRow, endCol };
}

function rangeBlock(range: string): Area {
  if (/^\$?[A-Z]{1,3}\$?[1-9]\d*(:\$?[A-Z]{1,3}\$?[1-9]\d*)?$/i.test(range)) return areaCalled(range);
  throw new FileProblem(`${range} is not a range such as A1:H60`);
}

/** An error in a cell is text to the log reader, which then says that it cannot be read. */
function content(cell: BookCell | undefined): unknown {
  const value = cell?.value;
  return typeof value === "object" ? value.error : (value ?? "");
}
