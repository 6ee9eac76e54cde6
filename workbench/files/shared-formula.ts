import { LexerTreeBuilder } from "@univerjs/engine-formula";

const lexer = new LexerTreeBuilder();
const texts = /"(?:[^"]|"")*"/gu;

/** A formula as it reads so many rows further down and columns further right: what cells that share a formula leave out. */
export function shiftedFormula(formula: string, rows: number, columns: number): string {
  const kept = formula.match(texts) ?? [];
  let count = 0;
  const bare = formula.replaceAll(texts, () => `"${count++}"`);
  const shifted = lexer.moveFormulaRefOffset(`=${bare}`, columns, rows).slice(1);
  return shifted.replaceAll(/"(\d+)"/gu, (_, n: string) => kept[Number(n)] ?? "");
}
