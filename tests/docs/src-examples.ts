import ts from "typescript";
import { type ProjectFile } from "../rules/project-files";

/** `@example saltRatio(ec25(2.4), ec25(1.5)) // 1.6` */
export interface SrcExample {
  readonly path: string;
  readonly expression: string;
  readonly answer: string;
}

/** Every line of every `@example` in the doc comments of a file; a line without an answer after ` // ` has an empty one. */
export function srcExamples({ path, text }: ProjectFile): SrcExample[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  const tags = source.statements.flatMap((statement) => ts.getJSDocTags(statement)).filter(({ tagName }) => tagName.text === "example");
  return tags.flatMap((tag) => {
    const lines = tag.getText().replace(/^@example\s*/, "").split("\n").map((line) => line.replace(/^\s*\*\s?/, "").trim());
    return lines.filter((line) => line !== "").map((line) => {
      const [expression = "", answer = ""] = line.split(" // ");
      return { path, expression: javascript(expression), answer };
    });
  });
}

/** Types such as `[5, 4] as Ec25[]` are for the reader of the example, not for its run. */
const javascript = (expression: string): string =>
  ts.transpile(`(${expression})`, { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext, alwaysStrict: false }).trim().replace(/;$/, "");

/** The most decimals that a number in the text shows. */
export const decimalsShown = (text: string): number =>
  Math.max(0, ...[...text.matchAll(/\d\.(\d+)/g)].map(([, decimals]) => decimals?.length ?? 0));

/** The value as JSON tells it, its numbers rounded to so many decimals. */
export function plain(value: unknown, decimals: number): unknown {
  if (value === undefined) return undefined;
  return JSON.parse(JSON.stringify(value, (_, part: unknown) => (typeof part === "number" ? rounded(part, decimals) : part)));
}

/** NaN and Infinity keep their names, for JSON would make them null. */
const rounded = (value: number, decimals: number): number | string => (Number.isFinite(value) ? Number(value.toFixed(decimals)) : String(value));
