import path from "node:path/posix";
import ts from "typescript";
import { type ProjectFile } from "./project-files";

/** What the rules need to know of one module. */
export interface ModuleFacts {
  /** Path without its ending: `src/maths/compare`. */
  readonly name: string;
  /** Modules of the project by name, and packages as written. */
  readonly imports: readonly string[];
  /** `export *`, in any form, and default exports. */
  readonly looseExports: readonly string[];
  /** Plain identifiers, and property chains such as `Date.now`, `new Date()`, `Excel.run`; comments and texts do not count. */
  readonly uses: ReadonlySet<string>;
}

const moduleName = (file: string): string => file.replace(/\.tsx?$/, "");

export function moduleFacts(files: readonly ProjectFile[]): ModuleFacts[] {
  const known = new Set(files.map((file) => moduleName(file.path)));
  return files.map((file) => {
    const source = ts.createSourceFile(file.path, file.text, ts.ScriptTarget.ES2022, true);
    const imported = ts.preProcessFile(file.text, true, true).importedFiles.map(({ fileName }) => fileName);
    return {
      name: moduleName(file.path),
      imports: imported.map((each) => resolved(each, file.path, known)),
      looseExports: source.statements.flatMap(looseExport),
      uses: usesOf(source),
    };
  });
}

function resolved(specifier: string, from: string, known: ReadonlySet<string>): string {
  if (!specifier.startsWith(".")) return specifier;
  const name = moduleName(path.join(path.dirname(from), specifier));
  return known.has(`${name}/index`) && !known.has(name) ? `${name}/index` : name;
}

function looseExport(statement: ts.Statement): string[] {
  if (ts.isExportDeclaration(statement)) {
    const named = statement.exportClause !== undefined && ts.isNamedExports(statement.exportClause);
    if (!named) return ["export *"];
    const names = statement.exportClause.elements.map((element) => element.name.text);
    return names.includes("default") ? ["default export"] : [];
  }
  if (ts.isExportAssignment(statement)) return ["default export"];
  const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
  return modifiers.some(({ kind }) => kind === ts.SyntaxKind.DefaultKeyword) ? ["default export"] : [];
}

function usesOf(source: ts.SourceFile): Set<string> {
  const uses = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node)) uses.add(node.getText()).add(`.${node.name.text}`);
    if (ts.isNewExpression(node) && (node.arguments ?? []).length === 0) uses.add(`new ${node.expression.getText()}()`);
    if (ts.isIdentifier(node) && !isNameOfMember(node)) uses.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return uses;
}

/** `document` in `log.document`, `{ document: 1 }` or `interface { document: string }` is a member's name, not the page. */
function isNameOfMember(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  const isMember = ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent);
  return isMember && parent.name === node;
}
