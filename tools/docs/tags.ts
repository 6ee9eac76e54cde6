import { readFileSync } from "node:fs";
import ts from "typescript";

/** What stands beside a worksheet function in its source and stays out of the host's tooltip. */
export interface DocTags {
  readonly id: string;
  readonly returns: string;
  readonly remarks: readonly string[];
  readonly examples: readonly string[];
  readonly see: readonly string[];
}

/** The worksheet functions of one file, in the order in which they are written. */
export function docTags(file: string): DocTags[] {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
  return source.statements.filter(ts.isFunctionDeclaration).flatMap((declaration) => {
    const tags = ts.getJSDocTags(declaration);
    const texts = (name: string): string[] => tags.filter((tag) => tag.tagName.text === name).map(tagText);
    const [id] = texts("customfunction").map((text) => text.split(/\s/)[0] ?? "");
    if (id === undefined) return [];
    const examples = texts("example").flatMap((text) => text.split("\n").map((line) => line.trim()).filter((line) => line !== ""));
    return [{ id, returns: texts("returns")[0] ?? "", remarks: texts("remarks"), examples, see: texts("see") }];
  });
}

/** The tag's own text; `@see` splits its first word off as a name, so it is read from the source. */
function tagText(tag: ts.JSDocTag): string {
  return tag
    .getText()
    .replace(/^@\w+\s*/, "")
    .replaceAll(/\n\s*\*? ?/g, "\n")
    .trim();
}
