import { type LogGrid } from "../../src/index";
import { loggerFile } from "./logger";
import { gridOfLines, type MessySheet, serial } from "./messy-sheet";
import { type ColumnTruth, columnTruths, plainValue } from "./truth";

/** A messy sheet made ready to be compared: rows and columns counted from 0. */
export interface Expected {
  readonly sheet: MessySheet;
  readonly grid: LogGrid;
  readonly columns: readonly (readonly ColumnTruth[])[];
  readonly kind: (row: number) => RowTruth;
  /** Cells of which something must be said, "row,column". */
  readonly told: ReadonlySet<string>;
  /** In mS/cm, L, C or %; null: nothing to be used in silence. */
  readonly value: (row: number, column: number, unit: string) => number | null;
  /** Whether the cell's value is told in the data and not plain. */
  readonly unplain: (row: number, column: number) => boolean;
  /** As a serial; null: no day can be known; `undefined`: not said. */
  readonly day: (row: number) => number | null | undefined;
  /** `undefined` where the sheet tells no pots apart. */
  readonly pot: (row: number) => string | undefined;
}

export type RowTruth = "header" | "blank" | "aside" | "reading" | "either";

export const place = (row: number, column: number): string => `${row},${column}`;
const placeOf = (cell: string): string => place(Number(cell.slice(1)) - 1, cell.charCodeAt(0) - "A".charCodeAt(0));
const isEmpty = (cell: unknown): boolean => cell === undefined || (typeof cell === "string" && cell.trim() === "");
const zeroBased = (rows: readonly number[]): Set<number> => new Set(rows.map((row) => row - 1));

export function expectedOf(sheet: MessySheet): Expected {
  return sheet.logger === undefined ? expectedOfLines(sheet) : expectedOfLogger(sheet, sheet.logger);
}

function expectedOfLines(sheet: MessySheet): Expected {
  const grid = gridOfLines(sheet);
  const columns = columnTruths(sheet.columns);
  const kind = kindOf(sheet, grid);
  const readings = grid.cells.flatMap((_, row) => (["reading", "either"].includes(kind(row)) ? [row] : []));
  const given = new Map(Object.entries(sheet.cells ?? {}).map(([cell, value]) => [placeOf(cell), value]));
  const value = (row: number, column: number, unit: string): number | null => {
    const said = given.get(place(row, column));
    return said === undefined ? plainValue(grid.cells[row]?.[column] ?? "", unit, sheet.comma ?? false) : said;
  };
  return {
    sheet, grid, columns, kind, value,
    told: new Set((sheet.told ?? "").split(" ").filter(Boolean).map(placeOf)),
    unplain: (row, column) => given.has(place(row, column)),
    day: dayOf(sheet, grid, columns, readings),
    pot: potOf(sheet, grid, columns, readings),
  };
}

function kindOf(sheet: MessySheet, { cells }: LogGrid): Expected["kind"] {
  const header = zeroBased(sheet.refused === true ? [] : (sheet.header ?? [1]));
  const aside = zeroBased(sheet.aside ?? []);
  const may = zeroBased(sheet.may ?? []);
  return (row) => {
    if (header.has(row)) return "header";
    if (cells[row]?.every(isEmpty) ?? true) return "blank";
    if (aside.has(row) || sheet.refused === true) return "aside";
    return may.has(row) ? "either" : "reading";
  };
}

type Columns = Expected["columns"];

const columnsThatAre = (columns: Columns, quantity: string): number[] =>
  columns.flatMap((truths, column) => (truths[0]?.quantity === quantity ? [column] : []));

function dayOf(sheet: MessySheet, { cells }: LogGrid, columns: Columns, readings: readonly number[]): Expected["day"] {
  const [date] = columnsThatAre(columns, "date");
  const [time] = columnsThatAre(columns, "time");
  return (row) => {
    const at = readings.indexOf(row);
    const said = sheet.days?.[at];
    if (said !== undefined) return said === null ? null : serial(said);
    if (date === undefined) return undefined;
    const cell = cells[row]?.[date];
    if (typeof cell !== "number" && typeof cell !== "string") return undefined;
    const day = typeof cell === "number" ? cell : serial(cell);
    const clock = time === undefined ? undefined : cells[row]?.[time];
    return typeof clock === "string" ? day + serial(`1970-01-01 ${clock}`) - serial("1970-01-01") : day;
  };
}

function potOf(sheet: MessySheet, { cells }: LogGrid, columns: Columns, readings: readonly number[]): Expected["pot"] {
  const vessels = columnsThatAre(columns, "vessel");
  return (row) => {
    if (sheet.pots !== undefined) return String(sheet.pots[readings.indexOf(row)]);
    return vessels.length === 0 ? undefined : vessels.map((column) => String(cells[row]?.[column])).join(" / ");
  };
}

function expectedOfLogger(sheet: MessySheet, plan: NonNullable<MessySheet["logger"]>): Expected {
  const { grid, days, repeats, spikes } = loggerFile(plan);
  const measured = plan.stamp === "apart" ? 2 : 1;
  const nothing = (row: number): boolean =>
    grid.cells[row]?.slice(measured).every((cell) => typeof cell !== "number") ?? true;
  return {
    sheet, grid, told: spikes,
    columns: columnTruths(sheet.columns),
    kind: (row) => {
      if (row === 0) return "header";
      if (repeats.has(row)) return "aside";
      return nothing(row) ? "either" : "reading";
    },
    value: (row, column, unit) =>
      spikes.has(place(row, column)) ? null : plainValue(grid.cells[row]?.[column], unit, false),
    unplain: (row, column) => spikes.has(place(row, column)),
    day: (row) => days[row],
    pot: () => undefined,
  };
}
