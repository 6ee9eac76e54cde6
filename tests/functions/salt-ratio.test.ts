import { describe, expect, it } from "vitest";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
describe("SALTRATIO", () => {
  it.each(["zero", "null", "empty"] as const)("is blank beside a blank reading (blank delivered as %s)", (blank) => {
    expect(host.call("SALTRATIO", [[[3], [undefined], [3]], [[1.5], [1.5], [undefined]]], blank)).toEqual([[2], [""], [""]]);
  });
});
