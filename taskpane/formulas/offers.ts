import { type Choices } from "../choices";
import { headerKeys } from "../column-answers";
import { type RootZone } from "../root-zone";
import { bandText } from "./band-text";
import { whatIsMissing } from "./column-formula";
import { compensatedColumns, type ComputedColumn, computedColumns, type FormulaOptions } from "./computed-columns";
import { logCells } from "./log-cell";

/** A column that can be put beside the log, or what the log lacks for it. */
export interface Offer {
  readonly column: ComputedColumn;
  readonly missing: string | undefined;
}

/** Every column that there is, with what this log lacks for it or has already. */
export function offersFor(zone: RootZone, uncompensated: boolean): Offer[] {
  const options = optionsFor(zone, uncompensated);
  const cells = logCells(zone.reading.columns, String);
  const columns = uncompensated ? [...Object.values(compensatedColumns), ...computedColumns] : computedColumns;
  const there = new Set(zone.reading.columns.map(({ header }) => header.trim().toLowerCase()));
  return columns.map((column) => ({
    column,
    missing: there.has(column.header.toLowerCase()) ? "is there already" : whatIsMissing(column, cells, options),
  }));
}

/** The band in force, and what the person says of the meter, for the formulas. */
export const optionsFor = ({ band }: RootZone, uncompensated: boolean): FormulaOptions => ({
  band: band === undefined ? undefined : bandText(band),
  limits: band,
  uncompensated,
});

/** Once EC at 25 C stands beside the log, it is the EC that is read, and the reading it was made from is not. */
export function ecFromNewColumns({ reading: { columns } }: RootZone): Partial<Choices> {
  const keys = headerKeys(columns.map(({ header }) => header));
  const answers: Record<string, Choices["columns"][string]> = {};
  for (const [quantity, { header }] of Object.entries(compensatedColumns) as [
    "input EC" | "runoff EC",
    ComputedColumn,
  ][]) {
    const made = columns.find((column) => column.header === header);
    if (made === undefined) continue;
    const from = columns.find((column) => column !== made && column.quantity === quantity);
    answers[keys[made.column] ?? ""] = { quantity, unit: "mS/cm" };
    if (from !== undefined) answers[keys[from.column] ?? ""] = { quantity: "other" };
  }
  return Object.keys(answers).length === 0 ? {} : { columns: answers };
}
