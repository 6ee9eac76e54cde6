import path from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { clientOver } from "../../../workbench/host/client/load-client";
import { MemoryStore } from "../../../workbench/host/excel/memory-store";

const { Excel: released } = clientOver(new MemoryStore());
const pane = path.resolve(import.meta.dirname, "../../../taskpane");

/** Each member of the host that the pane's own code names, as `Range.load`, by the types of the host. */
function namedMembers(): string[] {
  const { config } = ts.readConfigFile(path.join(pane, "tsconfig.json"), (file) => ts.sys.readFile(file)) as { config: unknown };
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, pane);
  const program = ts.createProgram(fileNames, options);
  const checker = program.getTypeChecker();
  const named = new Set<string>();
  const visit = (node: ts.Node): void => {
    const name = ts.isPropertyAccessExpression(node) ? node.name : ts.isBindingElement(node) ? (node.propertyName ?? node.name) : undefined;
    const symbol = name === undefined ? undefined : memberNamed(checker, node, name);
    const owner = symbol?.declarations?.[0]?.parent;
    if (symbol !== undefined && owner !== undefined && isOfHost(owner)) named.add(`${owner.name?.text}.${symbol.name}`);
    node.forEachChild(visit);
  };
  for (const file of program.getSourceFiles()) if (file.fileName.startsWith(`${pane.replaceAll("\\", "/")}/`)) visit(file);
  return [...named].sort();
}

function memberNamed(checker: ts.TypeChecker, node: ts.Node, name: ts.Node): ts.Symbol | undefined {
  if (!ts.isBindingElement(node)) return checker.getSymbolAtLocation(name);
  return checker.getTypeAtLocation(node.parent).getProperty(name.getText());
}

/** A class of the namespace Excel in the host's types, or what somebody adds to one. */
function isOfHost(owner: ts.Node): owner is ts.ClassDeclaration | ts.InterfaceDeclaration {
  if (!ts.isClassDeclaration(owner) && !(ts.isInterfaceDeclaration(owner) && owner.name.text in released)) return false;
  return ts.isModuleBlock(owner.parent) && owner.parent.parent.name.text === "Excel";
}

const members = namedMembers();

describe("every member of the host that the pane names", () => {
  it("is found in its code: ranges, sheets and tables are", () => {
    expect(members).toEqual(expect.arrayContaining(["Range.formulas", "Worksheet.getRangeByIndexes", "TableCollection.getItem", "WorksheetCollection.onChanged"]));
    expect(members.length).toBeGreaterThan(60);
  });

  it("stands in the released library", () => {
    const absent = members.filter((each) => {
      const [owner = "", name = ""] = each.split(".");
      const { prototype } = (released as unknown as Record<string, { prototype?: object }>)[owner] ?? {};
      return prototype === undefined || !(name in prototype);
    });
    expect(absent).toEqual([]);
  });
});
