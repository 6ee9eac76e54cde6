import { letterToCol } from "hucre";
import { columnLetters } from "../../../src/index";
import { HostError } from "./host-error";

/** A rectangle of cells; rows and columns are counted from 0. */
export interface Area {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

export const sheetRows = 1_048_576;
export const sheetColumns = 16_384;

/** An area that lies inside a sheet. @throws {HostError} `InvalidArgument` */
export function areaAt(sheetId: string, row: number, column: number, rowCount = 1, columnCount = 1): Area {
  const numbers = [row, column, rowCount, columnCount];
  const fits = row >= 0 && column >= 0 && rowCount >= 1 && columnCount >= 1 && row + rowCount <= sheetRows && column + columnCount <= sheetColumns;
  if (fits && numbers.every(Number.isInteger)) return { sheetId, row, column, rowCount, columnCount };
  throw new HostError("InvalidArgument", `no cells at row ${row}, column ${column}, ${rowCount} by ${columnCount}`);
}

const corner = /^\$?([A-Z]{1,3})?\$?([1-9]\d{0,6})?$/i;

/** `B2`, `$B$2:C40`, `A:C` or `2:5`; nothing when the text is no address. */
export function parseArea(address: string, sheetId: string): Area | undefined {
  const [first = "", second = first, ...more] = address.trim().split(":");
  const [from, to] = [corner.exec(first), corner.exec(second)];
  if (from === null || to === null || more.length > 0 || first === "") return undefined;
  if ((from[1] === undefined) !== (to[1] === undefined) || (from[2] === undefined) !== (to[2] === undefined)) return undefined;
  if (!address.includes(":") && (from[1] === undefined || from[2] === undefined)) return undefined;
  const columns = from[1] === undefined ? [0, sheetColumns - 1] : [letterToCol(from[1]), letterToCol(to[1] ?? "")];
  const rows = from[2] === undefined ? [0, sheetRows - 1] : [Number(from[2]) - 1, Number(to[2]) - 1];
  const [top, left] = [Math.min(...rows), Math.min(...columns)];
  return areaAt(sheetId, top, left, Math.max(...rows) - top + 1, Math.max(...columns) - left + 1);
}

/** The areas of one sheet; what is no address is left out. */
export const areasOf = (addresses: readonly string[], sheetId: string): Area[] => addresses.flatMap((each) => parseArea(each, sheetId) ?? []);

/** The sheet's name and the rest of `'My log'!B2`; no name when the address names no sheet. */
export function splitSheetName(address: string): { sheetName: string | undefined; cells: string } {
  const mark = address.lastIndexOf("!");
  if (mark < 0) return { sheetName: undefined, cells: address };
  const name = address.slice(0, mark);
  const bare = name.startsWith("'") && name.endsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
  return { sheetName: bare, cells: address.slice(mark + 1) };
}

/** `B2:C40`, without the sheet; whole columns and rows as `B:C` and `2:5`. */
export function cellsOf({ row, column, rowCount, columnCount }: Area): string {
  const [left, right] = [columnLetters(column), columnLetters(column + columnCount - 1)];
  const [top, bottom] = [row + 1, row + rowCount];
  if (rowCount === sheetRows) return `${left}:${right}`;
  if (columnCount === sheetColumns) return `${top}:${bottom}`;
  return rowCount === 1 && columnCount === 1 ? `${left}${top}` : `${left}${top}:${right}${bottom}`;
}

/** `Log!B2:C40`, the name in quotes where it needs them. */
export function addressOf(area: Area, sheetName: string): string {
  const plain = /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheetName) && parseArea(sheetName, "") === undefined;
  return `${plain ? sheetName : `'${sheetName.replaceAll("'", "''")}'`}!${cellsOf(area)}`;
}
