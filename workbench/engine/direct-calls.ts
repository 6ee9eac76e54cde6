import { cellRef } from "hucre";
import type { Book } from "../book";
import type { BlankDelivery, CellValue, FunctionsHost, FunctionsMetadata, Matrix } from "../host/functions-host";
import { type Area, isMany, keyOf, meet } from "./areas";
import type { EngineSheet } from "./engine-sheet";
import { withReason } from "./error-reasons";
import { functionCall } from "./function-call";
import { plainCall, type PlainArgument } from "./plain-call";

/** What a formula answered without the formula engine, and where that lies. */
export interface DirectAnswer {
  readonly sheet: number;
  readonly area: Area;
  readonly values: readonly (readonly CellValue[])[];
}

interface Candidate extends DirectAnswer {
  readonly key: string;
  readonly reads: readonly { readonly sheet: number; readonly area: Area }[];
}

/** Larger ranges are left to the engine, which knows where a sheet ends. */
const mostCells = 2_000_000;

/**
 * The formulas that are one call of a function of ours with constants and typed cells: by far the most in a log. They are
 * answered at once, by `keyOf`; whatever reads the answer of another formula, or a cell that one might spill into, is not.
 */
export function directAnswers(
  book: Book,
  sheets: readonly EngineSheet[],
  { host, metadata, blank }: { readonly host: FunctionsHost; readonly metadata: FunctionsMetadata; readonly blank: BlankDelivery },
): Map<string, DirectAnswer> {
  const functions = new Map(metadata.functions.map((each) => [each.name.toUpperCase(), each]));
  const numberOf = new Map(sheets.map(({ name }, n) => [name.toLowerCase(), n]));
  const candidates = new Map<string, Candidate>();
  const mayFill = sheets.map((): Area[] => []);
  for (const [sheet, { name, cells }] of sheets.entries()) {
    for (const { address, row, column, formula } of cells) {
      if (formula === undefined) continue;
      const key = keyOf(sheet, address);
      const plain = plainCall(formula, name);
      const called = plain === undefined ? undefined : functions.get(plain.name);
      const args = plain?.args.map((arg) => argumentOf(arg, book, numberOf));
      const given = args?.every((arg) => arg !== undefined) === true ? args : undefined;
      if (called === undefined || given === undefined) {
        if (maySpill(book.sheets[sheet]?.cells.get(address)?.fixedTo)) mayFill[sheet]?.push(endless(row, column));
        continue;
      }
      const values = functionCall(host, called, given.map(({ matrix }) => matrix), blank).map((each) => each.map(explained));
      const area = { startRow: row, startCol: column, endRow: row + values.length - 1, endCol: column + (values[0]?.length ?? 1) - 1 };
      if (isMany(area)) mayFill[sheet]?.push(area);
      candidates.set(key, { key, sheet, area, values, reads: given.flatMap(({ read }) => (read === undefined ? [] : [read])) });
    }
  }
  return withoutReadersOfSpills(candidates, mayFill.map(boxes));
}

function withoutReadersOfSpills(candidates: Map<string, Candidate>, filled: readonly (Area | undefined)[]): Map<string, Candidate> {
  const grown = [...filled];
  for (let hasChanged = true; hasChanged; ) {
    hasChanged = false;
    for (const { key, sheet, area, reads } of candidates.values()) {
      if (!reads.some((read) => { const box = grown[read.sheet]; return box !== undefined && meet(box, read.area); })) continue;
      candidates.delete(key);
      grown[sheet] = boxes([...(grown[sheet] === undefined ? [] : [grown[sheet]]), endless(area.startRow, area.startCol)]);
      hasChanged = true;
    }
  }
  return candidates;
}

/** A formula that the file holds to one cell cannot spill. */
const maySpill = (fixedTo: string | undefined): boolean => fixedTo?.includes(":") ?? true;

/** Where an answer of unknown size could lie. */
const endless = (row: number, column: number): Area => ({ startRow: row, startCol: column, endRow: Infinity, endCol: Infinity });

/** The one area that holds all of them. */
function boxes(areas: readonly Area[]): Area | undefined {
  return areas.reduce<Area | undefined>((box, { startRow, startCol, endRow, endCol }) => ({
    startRow: Math.min(box?.startRow ?? Infinity, startRow),
    startCol: Math.min(box?.startCol ?? Infinity, startCol),
    endRow: Math.max(box?.endRow ?? 0, endRow),
    endCol: Math.max(box?.endCol ?? 0, endCol),
  }), undefined);
}

interface Given {
  readonly matrix: Matrix | undefined;
  readonly read?: Candidate["reads"][number];
}

/** `undefined` where the argument has to be computed first. */
function argumentOf(arg: PlainArgument, book: Book, numberOf: ReadonlyMap<string, number>): Given | undefined {
  if (arg.kind === "left out") return { matrix: undefined };
  if (arg.kind === "constant") return { matrix: [[arg.value]] };
  const sheet = numberOf.get(arg.sheet.toLowerCase());
  const cells = sheet === undefined ? undefined : book.sheets[sheet]?.cells;
  const { startRow, endRow, startCol, endCol } = arg.area;
  if (sheet === undefined || cells === undefined || (endRow - startRow + 1) * (endCol - startCol + 1) > mostCells) return undefined;
  const matrix: CellValue[][] = [];
  for (let row = startRow; row <= endRow; row += 1) {
    const values: CellValue[] = [];
    for (let column = startCol; column <= endCol; column += 1) {
      const cell = cells.get(cellRef(row, column));
      if (cell?.formula !== undefined) return undefined;
      values.push(cell?.value);
    }
    matrix.push(values);
  }
  return { matrix, read: { sheet, area: arg.area } };
}

const explained = (value: CellValue): CellValue => (typeof value === "object" ? withReason(value.error, value.reason) : value);
