import { type ColumnAnswer, type ColumnReading, readLog } from "../../src/index";
import { type RootZone } from "../root-zone";
import { holds } from "./as-entered";
import { formulaFor } from "./column-formula";
import { compensatedColumns, type ComputedColumn, computedColumns, type FormulaKind } from "./computed-columns";
import { logCells } from "./log-cell";
import { optionsFor } from "./offers";

/** A formula of ours, written in either kind. */
export type BothKinds = Readonly<Record<FormulaKind, string>>;

/** How a formula of one row names a column of the log, counted within the selection. */
export type ReferenceOf = (column: number) => string;

const ours = new Map<string, ComputedColumn>(
  [...computedColumns, ...Object.values(compensatedColumns)].map((column) => [column.header, column]),
);

/** Both kinds of the formula that a cell holds; `undefined` where it holds none of ours. */
export type Find = (column: ComputedColumn, referenceOf: ReferenceOf, cell: unknown) => BothKinds | undefined;

/** The computed column with this header; `undefined` for a header of the person's own. */
export const columnHeaded = (header: string): ComputedColumn | undefined => ours.get(header);

/**
 * Tells a formula of ours by its being, letter for letter, what is written for that column and row; with it, how the
 * other kind reads. A formula that a person changed, or that was made for other limits, is none.
 */
export function finderFor(zone: RootZone): Find {
  const { columns } = zone.reading;
  const ways = [
    { columns, uncompensated: false }, { columns, uncompensated: true },
    { columns: columnsAsTyped(zone), uncompensated: true },
  ];
  return (column, referenceOf, cell) => {
    if (typeof cell !== "string" || !cell.startsWith("=")) return undefined;
    for (const way of ways) {
      const cells = logCells(way.columns, referenceOf);
      const options = optionsFor(zone, way.uncompensated);
      const write = (kind: FormulaKind): string => formulaFor(column, cells, { ...options, kind });
      const both = { functions: write("functions"), plain: write("plain") };
      if (both.plain !== nothing && (holds(cell, both.functions) || holds(cell, both.plain))) return both;
    }
    return undefined;
  };
}

/** What is written where the log lacks a column that the plain formula needs. */
const nothing = '=""';

/** The columns as they were read before EC at 25 C stood beside them and took their place. */
function columnsAsTyped({ selection: { grid }, answers, reading: { columns } }: RootZone): readonly ColumnReading[] {
  const made = new Set<string>(Object.values(compensatedColumns).map(({ header }) => header));
  if (!columns.some(({ header }) => made.has(header))) return columns;
  const typed = Object.entries(answers.columns ?? {}).filter(([, { quantity }]) => quantity !== "other");
  const ownColumns = columns.filter(({ header }) => made.has(header));
  const others = ownColumns.map(({ column }) => [String(column), { quantity: "other" }] as const);
  return readLog(grid, { ...answers, columns: Object.fromEntries<ColumnAnswer>([...typed, ...others]) }).columns;
}
