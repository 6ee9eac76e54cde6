import { type CellValue } from "../../workbench/host/functions-host";
import { type DocTags } from "../../tools/docs/tags";

/** `=RUNOFF.SALTRATIO(3, 1.5) -> 2` */
export interface FormulaExample {
  readonly id: string;
  readonly formula: string;
  /** As written: a number, a text, an error, nothing for a blank, or `{1,2;3,4}`. */
  readonly answer: string;
}

export function formulaExamples({ id, examples }: Pick<DocTags, "id" | "examples">): FormulaExample[] {
  return examples.map((line) => {
    const [formula = "", answer] = line.split(" -> ");
    if (answer === undefined) throw new Error(`the example of ${id} shows no answer after " -> ": ${line}`);
    return { id, formula: formula.replace(/^=/, ""), answer };
  });
}

/** What the cells hold, written as the example writes it: numbers at the decimals that the example shows in their place. */
export function asWritten(cells: readonly (readonly CellValue[])[], answer: string): string {
  const rows = answerRows(answer);
  const written = cells.map((row, at) => row.map((cell, across) => cellAsWritten(cell, rows[at]?.[across] ?? "")));
  return isArray(answer) ? `{${written.map((row) => row.join(",")).join(";")}}` : written.map((row) => row.join(",")).join(";");
}

const isArray = (answer: string): boolean => answer.startsWith("{");

/** The example's own cells. A text with a comma or a semicolon in it is written in quotes. */
function answerRows(answer: string): string[][] {
  if (!isArray(answer)) return [[answer]];
  const cells = answer.slice(1, -1).matchAll(/("[^"]*"|[^,;"]*)([,;]|$)/g);
  const rows: string[][] = [[]];
  for (const [, cell = "", end = ""] of cells) {
    rows.at(-1)?.push(cell);
    if (end === ";") rows.push([]);
    if (end === "") break;
  }
  return rows;
}

function cellAsWritten(cell: CellValue, example: string): string {
  if (typeof cell === "number") return atDecimalsOf(cell, example);
  if (typeof cell === "object") return cell.error;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return example.startsWith('"') ? `"${cell ?? ""}"` : (cell ?? "");
}

/** A number shown without decimals is meant exactly. */
function atDecimalsOf(value: number, example: string): string {
  const decimals = /\.(\d+)$/.exec(example)?.[1]?.length;
  return decimals === undefined ? String(Number(value.toPrecision(12))) : value.toFixed(decimals);
}
