import ts from "typescript";
import { replacements } from "./operators";

/** One small change to a source file. */
export interface Mutant {
  readonly file: string;
  /** Counted from 1. */
  readonly line: number;
  readonly from: string;
  readonly to: string;
  /** The whole file with the change in it. */
  readonly text: string;
}

/** Types, imports and exports carry no behaviour. */
function isOutside(node: ts.Node): boolean {
  return ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node) ||
    ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node) || ts.isTypeParameterDeclaration(node);
}

/** Every mutant of a file, from top to bottom. */
export function mutantsOf(file: string, text: string): Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.TS);
  const found: Mutant[] = [];
  const visit = (node: ts.Node): void => {
    if (isOutside(node)) return;
    for (const { at, to } of replacements(node)) {
      const [start, end] = [at.getStart(source), at.getEnd()];
      found.push({
        file, to, from: text.slice(start, end),
        line: source.getLineAndCharacterOfPosition(start).line + 1,
        text: text.slice(0, start) + to + text.slice(end),
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
