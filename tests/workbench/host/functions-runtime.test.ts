import path from "node:path";
import { describe, expect, it } from "vitest";
import { functionsThroughRuntime } from "../../../workbench/host/client/load-client";
import { distFolder } from "../../../workbench/host/load-bundle";

const runtime = functionsThroughRuntime(path.join(distFolder, "functions.js"));

describe("the host's own custom-functions runtime calling the built functions", () => {
  it("two columns: 2.4 over 1.5 is 1.6, 3 over 1.4 is 15/7", async () => {
    const [answer] = await runtime.call([{ id: "SALTRATIO", args: [[[2.4], [3]], [[1.5], [1.4]]] }]);
    expect(answer).toEqual([[expect.closeTo(1.6, 12)], [expect.closeTo(15 / 7, 12)]]);
  });

  it("a blank delivered as 0, as null and as empty text gives a blank each time", async () => {
    const blanks = (["zero", "null", "empty"] as const).map((blank) => ({ id: "SALTRATIO", args: [[[undefined]], [[1.5]]], blank }));
    expect(await runtime.call(blanks)).toEqual([[[""]], [[""]], [[""]]]);
  });

  it("an error in one input cell reaches the function, and its row alone says so, with the reason", async () => {
    const [answer] = await runtime.call([{ id: "SALTRATIO", args: [[[2.4], [{ error: "#DIV/0!" }]], [[1.5], [1.5]]] }]);
    expect(answer).toEqual([[expect.closeTo(1.6, 12)], [{ error: "#VALUE!", reason: expect.stringContaining("#DIV/0!") as unknown }]]);
  });

  it("cells of a data type count by their basic value: a formatted 2.4 over a formatted 1.5 is 1.6", async () => {
    const formatted = (basicValue: number): object => ({ type: "FormattedNumber", basicType: "Double", basicValue, numberFormat: "0.0 \"mS/cm\"" });
    const [answer] = await runtime.callWithDataTypes("SALTRATIO", [[[formatted(2.4)]], [[formatted(1.5)]]]);
    expect(answer).toEqual([[expect.closeTo(1.6, 12)]]);
  });

  it("answers of one wave come together, none before the runtime flushes", async () => {
    let answered = 0;
    const calls = [1.5, 1.6, 1.7].map((feed) => runtime.call([{ id: "SALTRATIO", args: [[[3]], [[feed]]] }]).then(() => { answered += 1; }));
    await new Promise((resolve) => { setImmediate(resolve); });
    expect(answered).toBe(0);
    await Promise.all(calls);
    expect(answered).toBe(3);
  });

  it("a function that nobody associated is an error", async () => {
    expect(await runtime.call([{ id: "NOSUCH", args: [[[1]]] }])).toEqual([[[{ error: expect.stringMatching(/^#(N\/A|VALUE!)$/) as unknown }]]]);
  });
});
