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

/** An answer without a decimal point, or written as a fraction, is meant exactly: so many decimals. */
const exactDecimals = 9;

/** At how many decimals a value is held against the answer's text: the most that it shows. */
export function decimalsShown(text: string): number {
  const shown = Math.max(0, ...[...text.matchAll(/\d\.(\d+)/g)].map(([, decimals]) => decimals?.length ?? 0));
  return shown === 0 ? exactDecimals : shown;
}

/** The value as JSON tells it, its numbers rounded to so many decimals. */
export function plain(value: unknown, decimals: number): unknown {
  if (value === undefined) return undefined;
  return JSON.parse(JSON.stringify(value, (_, part: unknown) => plainPart(part, decimals)));
}

/** NaN and Infinity keep their names, for JSON would make them null; a typed array becomes a plain one. */
function plainPart(part: unknown, decimals: number): unknown {
  if (part instanceof Float64Array) return [...part];
  if (typeof part !== "number") return part;
  return Number.isFinite(part) ? Number(part.toFixed(decimals)) : String(part);
}
