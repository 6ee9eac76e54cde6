import { describe, expect, it } from "vitest";
import { mutantsOf } from "../../tools/mutants/mutate";

const changes = (text: string): string[] =>
  mutantsOf("src/a.ts", text).map(({ line, from, to }) => `${line}: ${from} -> ${to}`);

describe("mutantsOf(file, text)", () => {
  it.each([
    ["a limit and its side", "const a = b < c;", ["1: < -> <=", "1: < -> >="]],
    ["a condition", "if (a) f();", ["1: a -> true", "1: a -> false"]],
    ["a figure, and 0", "f(3.5, 0);", ["1: 3.5 -> (3.5 * 2)", "1: 0 -> 1"]],
    ["a single word, never a sentence", "f('runoff', 'not a reading');", ["1: 'runoff' -> \"runoff~\""]],
    ["a call and the one it is mistaken for", "a.some(f);", ["1: some -> every"]],
    ["a filter that keeps all", "a.filter(f);", ["1: f -> () => true"]],
    ["a sign and a no", "f(-a, !b);", ["1: -a -> a", "1: !b -> b"]],
    ["the second line", "f();\ng(a && b);", ["2: && -> ||"]],
  ])("changes %s", (_, text, wanted) => {
    expect(changes(text)).toEqual(wanted);
  });

  it.each([
    ["types", "type A = 'in' | 3; interface B { readonly c: 0 }"],
    ["imports and exports", "import { a } from './b'; export { c } from './d';"],
    ["the key of a source", "const a = { source: '[kendall-1975]' };"],
    ["text joined by +", "const a = 'b c' + d;"],
  ])("leaves %s alone", (_, text) => {
    expect(changes(text)).toEqual([]);
  });

  it("puts one change into the whole text", () => {
    const texts = mutantsOf("src/a.ts", "f(1); g(2);").map(({ text }) => text);
    expect(texts).toEqual(["f((1 * 2)); g(2);", "f(1); g((2 * 2));"]);
  });
});
