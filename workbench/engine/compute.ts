import { parseRange } from "hucre";
import type { Book, BookSheet, ComputedSheet } from "../book";
import type { BlankDelivery, FunctionsHost, FunctionsMetadata } from "../host/functions-host";
import { answersOf, type Answers } from "./answers";
import { keyOf } from "./areas";
import { type DirectAnswer, directAnswers } from "./direct-calls";
import { withDirect, withSpills } from "./direct-overlay";
import type { EngineAnswer, EngineCell, EngineName, EngineSheet } from "./engine-sheet";
import { outOfReach } from "./reach";
import { engineNames, withOwnNames } from "./sheet-names";
import { hasSpillReference, withoutSpillReferences } from "./spill-references";
import { tablesOf, withoutStructuredReferences } from "./structured-references";

export interface ComputeOptions {
  readonly blank?: BlankDelivery;
}

/** A spill may read a spill that reads a spill: after so many rounds of looking up their ranges that is called endless. */
const mostRounds = 10;

/** Computes every formula of a book, the host's own and the add-in's, from the values typed into it. */
export async function computeBook(
  book: Book,
  host: FunctionsHost,
  metadata: FunctionsMetadata,
  { blank = "zero" }: ComputeOptions = {},
): Promise<readonly ComputedSheet[]> {
  const prepared = formulaSheets(book);
  const direct = directAnswers(book, prepared, { host, metadata, blank });
  const engine: Engine = async (sheets, names) => {
    const [{ univerFunctions }, { runEngine }] = await Promise.all([import("./univer-functions"), import("./univer-engine")]);
    return runEngine(sheets, names, univerFunctions(host, metadata, "RUNOFF", () => blank));
  };
  const readsSpills = prepared.some(({ cells }) => cells.some(({ formula = "" }) => hasSpillReference(formula)));
  const asked = prepared.map(({ name, cells }, n) => ({ name, cells: cells.filter(({ address }) => !direct.has(keyOf(n, address))) }));
  let before: Answers = { sheets: [], refused: outOfReach(asked, engineNames(book)) };
  for (let round = 1; ; round += 1) {
    const now = await computeOnce(book, prepared, { direct, engine, before });
    const isSettled = now.refused.size === before.refused.size && (!readsSpills || haveSameSpills(before, now));
    if (isSettled || round > mostRounds) return now.sheets;
    before = round < mostRounds ? now : { sheets: [], refused: now.refused };
  }
}

async function computeOnce(
  book: Book,
  prepared: readonly EngineSheet[],
  { direct, engine, before }: { readonly direct: ReadonlyMap<string, DirectAnswer>; readonly engine: Engine; readonly before: Answers },
): Promise<Answers> {
  const rangeOf = (name: string, address: string): string | undefined => {
    const sheet = before.sheets.find((each) => each.name.toLowerCase() === name.toLowerCase());
    return sheet?.spills.get(address) ?? (sheet?.values.has(address) === true ? address : undefined);
  };
  const isAnswered = (sheet: number, address: string): boolean => before.refused.has(keyOf(sheet, address)) || direct.has(keyOf(sheet, address));
  if (prepared.every(({ cells }, n) => cells.every(({ address }) => isAnswered(n, address)))) {
    return answersOf(book, withDirect(nothing, direct, book), before.refused);
  }
  const sheets = prepared.map(({ name, cells }, n) => {
    const asked = cells.map(({ address, row, column, formula = "" }): EngineCell => {
      const refusal = before.refused.get(keyOf(n, address));
      if (refusal !== undefined) return { address, row, column, value: refusal };
      const answer = direct.get(keyOf(n, address));
      if (answer !== undefined) return { address, row, column, value: answer.values[0]?.[0] };
      return { address, row, column, formula: withoutSpillReferences(formula, name, rangeOf) };
    });
    return { name, cells: [...asked, ...typedCells(book.sheets[n])] };
  });
  const answered = await engine(withSpills(sheets, direct, before.refused), engineNames(book));
  return answersOf(book, withDirect(answered, direct, book), before.refused);
}

/** Computes what is not answered directly; loaded only when there is such a thing. */
type Engine = (sheets: readonly EngineSheet[], names: readonly EngineName[]) => Promise<EngineAnswer>;

const nothing: EngineAnswer = { valueAt: () => undefined, spillFrom: () => undefined, dependencies: [] };

/** The formulas of every sheet in the engine's dialect; what is typed stays in the book until the engine is needed. */
function formulaSheets(book: Book): EngineSheet[] {
  const tables = tablesOf(book);
  return book.sheets.map(({ name, cells }) => ({
    name,
    cells: [...cells].flatMap(([address, { formula }]): EngineCell[] => {
      if (formula === undefined) return [];
      const { startRow: row, startCol: column } = parseRange(address);
      const plain = withoutStructuredReferences(formula, tables, { sheet: name, row, column });
      return [{ address, row, column, formula: withOwnNames(plain, name, book.names) }];
    }),
  }));
}

function typedCells(sheet: BookSheet | undefined): EngineCell[] {
  return [...(sheet?.cells ?? [])].flatMap(([address, { value, formula }]): EngineCell[] => {
    if (value === undefined || formula !== undefined) return [];
    const { startRow: row, startCol: column } = parseRange(address);
    return [{ address, row, column, value }];
  });
}

function haveSameSpills(one: Answers, other: Answers): boolean {
  const written = ({ sheets }: Answers) => JSON.stringify(sheets.map(({ spills, values }) => [[...spills], values.size]));
  return written(one) === written(other);
}
