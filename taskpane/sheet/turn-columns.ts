import { type BothKinds, columnHeaded, finderFor, type ReferenceOf } from "../formulas/both-kinds";
import { type FormulaKind } from "../formulas/computed-columns";
import { holds } from "../formulas/as-entered";
import { inThisRow } from "../formulas/log-cell";
import { type RootZone } from "../root-zone";
import { turnWords } from "../words/turn-columns";
import { SheetProblem, writingInExcel } from "../workbook";
import { columnNames, tableBlock } from "./add-to-table";
import { cellAddress, rangeOf } from "./address";
import { addresses, type Done, takeBackCells, writableSheet } from "./done";
import { inBlocks } from "./every-sheet";
import { headerCells, type LogPlace, logPlace, usedCorner } from "./log-place";
import { writeOnSheets } from "./write-on-sheets";

/** Turns a log's computed columns, in place, into formulas of the other kind; what is not ours stays, and is named. */
export const turnColumns = (zone: RootZone, kind: FormulaKind): Promise<Done> =>
  writingInExcel(async (context) => {
    const { sheetId, sheetName } = zone.selection;
    const sheet = (await writableSheet(context, sheetId)).load("id");
    const { turning, changed } = await lookThrough(context, { zone, sheet, kind });
    if (turning.length === 0) {
      const words = `${turnWords.already(kind, sheetName)}${turnWords.changed(changed)}`;
      return { words, takeBack: () => Promise.resolve(turnWords.nothing) };
    }
    const blocks = inBlocks(turning).map(({ block, cells }) => ({
      block,
      before: cells.map(({ formula }) => [formula]),
      write: (range: Excel.Range): void => { range.formulas = cells.map(({ both }) => [both[kind]]); },
    }));
    const written = await writeOnSheets(context, [{ sheet, blocks }]);
    const where = `${sheetName} at ${addresses(blocks)}`;
    return {
      words: `${turnWords.turned(kind, turning.length, where)}${turnWords.changed(changed)}`,
      takeBack: () => takeBackCells(written),
    };
  });

interface Turning {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly both: BothKinds;
}

interface Found {
  readonly turning: readonly Turning[];
  /** Cells of our columns, in rows of readings, with formulas that are not as written here. */
  readonly changed: readonly string[];
}

interface Look {
  readonly zone: RootZone;
  readonly sheet: Excel.Worksheet;
  readonly kind: FormulaKind;
}

/** Every formula under a header of ours: those to be turned, and those that are none of ours. */
async function lookThrough(context: Excel.RequestContext, { zone, sheet, kind }: Look): Promise<Found> {
  const place = logPlace(zone);
  const corner = await usedCorner(context, sheet);
  const { headerRow: row } = place;
  const headers = await headerCells(context, sheet, { row, column: 0, rows: 1, columns: corner.column + 1 });
  const columns = headers.flatMap(({ text, column }) => {
    const ours = columnHeaded(text);
    if (ours === undefined || corner.row <= row) return [];
    const below = { row: row + 1, column, rows: corner.row - row, columns: 1 };
    return [{ ours, column, range: rangeOf(sheet, below).load("formulas") }];
  });
  if (columns.length === 0) throw new SheetProblem("selection", turnWords.none);
  await context.sync();
  const references = await referencesOf(context, zone);
  const find = finderFor(zone);
  const cells = columns.flatMap(({ ours, column, range }) => (range.formulas as unknown[][]).flatMap(([formula], i) =>
    typeof formula === "string" && formula.startsWith("=") ? [{ ours, column, row: row + 1 + i, formula }] : []));
  const judged = cells.map((cell) => ({ ...cell, both: find(cell.ours, references(cell.row), cell.formula) }));
  return {
    turning: judged.flatMap(({ both, ...cell }) =>
      (both === undefined || holds(cell.formula, both[kind]) ? [] : [{ ...cell, both }])),
    changed: judged
      .filter(({ both, row: at }) => both === undefined && isReading(place, at))
      .map((cell) => cellAddress(cell.row, cell.column)),
  };
}

const isReading = ({ firstRow, lastRow, skipped }: LogPlace, row: number): boolean =>
  row >= firstRow && row <= lastRow && !skipped.has(row);

/** How the formulas of a row name the log's columns: by address, or in a Table by the column's name. */
async function referencesOf(
  context: Excel.RequestContext, { selection: { tableName, columnNumbers } }: RootZone,
): Promise<(row: number) => ReferenceOf> {
  if (tableName === undefined) return (row) => (column) => cellAddress(row, columnNumbers[column] ?? column);
  const table = context.workbook.tables.getItem(tableName);
  const { column: first } = await tableBlock(context, table);
  const names = await columnNames(context, table);
  return () => (column) => inThisRow(tableName, names[(columnNumbers[column] ?? 0) - first] ?? "");
}
