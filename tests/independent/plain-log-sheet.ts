import { columnLetters } from "../../src/index";
import { formulaFor } from "../../taskpane/formulas/column-formula";
import {
  compensatedColumns, computedColumns, type FormulaKind, type FormulaOptions,
} from "../../taskpane/formulas/computed-columns";
import { logCells, type LogCells } from "../../taskpane/formulas/log-cell";
import { type CellValue } from "../../workbench/host/functions-host";
import { rawWorkbook } from "../workbench/files/raw-workbook";
import { type PlainLog } from "./plain-logs";

/** One computed cell of a log: where it stands, and what was asked for there. */
export interface LogFormula {
  readonly cell: string;
  readonly header: string;
  readonly row: number;
  readonly formula: string;
}

type Limits = Pick<FormulaOptions, "band" | "limits">;

/** Every column that the log has the readings for, in every row, with EC as the meter shows it and brought to 25 C. */
export function formulasOf(log: PlainLog, kind: FormulaKind, limits: Limits): LogFormula[] {
  const readings = log.columns.map(([quantity, unit], column) =>
    ({ column, header: quantity, quantity, unit, why: "", read: true, letters: "" }));
  const there = new Set<string>(log.columns.map(([quantity]) => quantity));
  const ways = there.has("solution temperature") ? [false, true] : [false];
  const made = ways.flatMap((uncompensated) => {
    const columns = uncompensated ? [...Object.values(compensatedColumns), ...computedColumns] : computedColumns;
    const known = columns.filter(({ needs }) => needs.every((need) => there.has(need)));
    return known.map((column) => ({ column, uncompensated }));
  });
  const cellsIn = (row: number): LogCells => logCells(readings, (each) => `${columnLetters(each)}${row + 1}`);
  return log.rows.flatMap((_, row) => made.map(({ column, uncompensated }, place) => ({
    cell: `${columnLetters(log.columns.length + place)}${row + 1}`,
    header: uncompensated ? `${column.header}, brought to 25 C` : column.header,
    row,
    formula: formulaFor(column, cellsIn(row), { ...limits, uncompensated, kind }),
  })));
}

/** A log and the formulas beside it. */
export interface LogWithFormulas {
  readonly log: PlainLog;
  readonly formulas: readonly LogFormula[];
}

/** A workbook with a sheet for each log, its cells and the formulas beside them. */
export function workbookOf(logs: readonly LogWithFormulas[]): Uint8Array {
  return rawWorkbook({
    sheets: logs.map(({ log, formulas }, sheet) => ({
      name: `Log${sheet + 1}`,
      rows: log.rows.map((cells, row) => {
        const values = cells.map((value, column) => valueCell(`${columnLetters(column)}${row + 1}`, value));
        const own = formulas.filter((each) => each.row === row);
        const beside = own.map(({ cell, formula }) => `<c r="${cell}"><f>${escaped(formula.slice(1))}</f></c>`);
        return `<row r="${row + 1}">${[...values, ...beside].join("")}</row>`;
      }).join(""),
    })),
  });
}

function valueCell(at: string, value: CellValue): string {
  if (value === undefined || value === "") return "";
  if (typeof value === "number") return `<c r="${at}"><v>${value}</v></c>`;
  if (typeof value === "boolean") return `<c r="${at}" t="b"><v>${value ? 1 : 0}</v></c>`;
  if (typeof value === "object") return `<c r="${at}" t="e"><v>${value.error}</v></c>`;
  return `<c r="${at}" t="inlineStr"><is><t>${escaped(value)}</t></is></c>`;
}

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
