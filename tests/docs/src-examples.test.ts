import { pathToFileURL } from "node:url";
import path from "node:path";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import * as engine from "../../src/index";
import { filesUnder, root } from "../rules/project-files";
import { decimalsShown, plain, srcExamples } from "./src-examples";

const examples = filesUnder("src", /\.ts$/).flatMap(srcExamples);

describe("the examples in src", () => {
  it("are there", () => {
    expect(examples.length).toBeGreaterThan(10);
  });

  it.each(examples.map((each) => [`${each.path}: ${each.expression} // ${each.answer}`, each] as const))("%s", async (_, example) => {
    expect(example.answer).not.toBe("");
    const own = (await import(/* @vite-ignore */ pathToFileURL(path.join(root, example.path)).href)) as object;
    const known = { ...engine, ...own };
    const decimals = decimalsShown(example.answer);
    const expected: unknown = runInNewContext(`(${example.answer})`, known);
    expect(plain(runInNewContext(example.expression, known), decimals)).toEqual(plain(expected, decimals));
  });
});

describe("the reading of examples", () => {
  it("takes the types out and the answer off", () => {
    const text = "/**\n * @example f([5, 4] as Ec[], 2) // [1.25, 2]\n */\nexport function f() {}";
    expect(srcExamples({ path: "a.ts", text })).toEqual([{ path: "a.ts", expression: "(f([5, 4], 2))", answer: "[1.25, 2]" }]);
  });

  it("compares at the decimals shown, and tells a blank, NaN and a near miss from the answer", () => {
    expect(decimalsShown("[1.25, 2]")).toBe(2);
    expect(plain(8.4, decimalsShown("8"))).not.toEqual(8);
    expect(plain(Float64Array.of(1, 0.5), 2)).toEqual([1, 0.5]);
    expect(plain([1.2549, undefined], 2)).toEqual([1.25, null]);
    expect(plain(1.2551, 2)).not.toBe(1.25);
    expect(plain(Number.NaN, 2)).toBe("NaN");
    expect(plain(undefined, 2)).toBeUndefined();
  });
});
