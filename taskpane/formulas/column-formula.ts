import { type LogQuantity } from "../../src/index";
import { type ComputedColumn, flagHeader, type FormulaOptions, type RowText } from "./computed-columns";
import { inEngineUnit, type LogCells } from "./log-cell";
import { plainReading, type PlainRow } from "./plain-reading";

/** The formula of one column for one row, with its equals sign; a plain one that lacks a column is blank. */
export function formulaFor(column: ComputedColumn, cells: LogCells, options: FormulaOptions): string {
  if (options.kind !== "plain") return `=${column.formula(rowText(cells, options))}`;
  return `=${column.plain(plainRow(cells, options), options.limits) ?? '""'}`;
}

function rowText(cells: LogCells, { band, uncompensated }: FormulaOptions): RowText {
  return (quantity) => {
    if (quantity === "band") return band ?? '""';
    const cell = cells.get(quantity);
    if (cell === undefined) return '""';
    const temperature = cells.get("solution temperature");
    const text = inEngineUnit(cell);
    if (!quantity.endsWith("EC") || !uncompensated || temperature === undefined) return text;
    return `RUNOFF.ECAT25(${text},${inEngineUnit(temperature)})`;
  };
}

function plainRow(cells: LogCells, { uncompensated }: FormulaOptions): PlainRow<LogQuantity> {
  return (quantity) => {
    const cell = cells.get(quantity);
    if (cell === undefined) return undefined;
    return plainReading(cell, quantity.endsWith("EC") && uncompensated ? cells.get("solution temperature") : undefined);
  };
}

/** Why a column cannot be made from this log; `undefined` when it can. */
export function whatIsMissing(
  column: ComputedColumn,
  cells: LogCells,
  { band, uncompensated }: FormulaOptions,
): string | undefined {
  const needs = new Set(column.needs);
  if (column.header === flagHeader && !cells.has("runoff pH") && !cells.has("runoff EC"))
    return "needs a column of runoff pH or runoff EC";
  if (column.header === flagHeader && band === undefined) return "choose the medium first";
  const usesEc = column.header === flagHeader || column.needs.some((quantity) => quantity.endsWith("EC"));
  if (usesEc && uncompensated) needs.add("solution temperature");
  const missing = [...needs].filter((quantity) => !cells.has(quantity));
  return missing.length === 0 ? undefined : `needs a column of ${missing.join(" and ")}`;
}
