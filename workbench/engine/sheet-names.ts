import type { Book, BookName } from "../book";
import type { EngineName } from "./engine-sheet";
import { outsideText, sheetIn, sheetPrefix } from "./formula-text";
import { tablesOf, withoutStructuredReferences } from "./structured-references";

/** A book's names as they are called in the engine, in its own dialect. */
export function engineNames(book: Book): EngineName[] {
  const tables = tablesOf(book);
  return book.names.map((each, position) => ({
    name: ownName(each, position),
    refersTo: withoutStructuredReferences(each.refersTo, tables, { sheet: "", row: -1, column: -1 }),
  }));
}

/** Univer keeps one name of a kind; the host lets each sheet have its own, and prefers it. So those get a name of their own. */
function ownName({ name, onlyOn }: BookName, position: number): string {
  return onlyOn === undefined ? name : `_only${position}_${name}`;
}

/** Writes a sheet's own names, in its formulas or qualified (`Log!Limit`), as they are called in the engine. */
export function withOwnNames(formula: string, sheet: string, names: readonly BookName[]): string {
  let answer = formula;
  for (const [position, each] of names.entries()) {
    if (each.onlyOn === undefined || !formula.toLowerCase().includes(each.name.toLowerCase())) continue;
    const word = each.name.replaceAll(/[.\\]/gu, String.raw`\$&`);
    const wanted = new RegExp(String.raw`(${sheetPrefix})?(?<![\p{L}\p{N}_.\\])${word}(?![\p{L}\p{N}_.\\(!\[])`, "giu");
    answer = outsideText(answer, (code) =>
      code.replace(wanted, (whole, prefix: string | undefined) =>
        sheetIn(prefix, sheet).toLowerCase() === each.onlyOn?.toLowerCase() ? ownName(each, position) : whole,
      ),
    );
  }
  return answer;
}
