import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { loadBundle } from "../workbench/host/load-bundle";
import { type CheckFile, checkFiles, faultsOf } from "./check-values/check-file";
import { compare, compareAll, factOf } from "./check-values/compare";

const { host } = loadBundle();
const files = checkFiles();

describe.each(files)("$function: $about ($source)", (file) => {
  it("is a check file without faults", () => {
    expect(faultsOf(file, host.ids)).toEqual([]);
  });

  it.each(file.rows.map((row) => ({ row, fact: factOf(file, row) })))("$fact", ({ row }) => {
    const { answer, within } = compare(host, file, row);
    expect({ answer, within }).toEqual({ answer, within: true });
  });
});

describe("the check values as a whole", () => {
  it("leave no file of the folder and no row of a file out", () => {
    const folder = path.join(import.meta.dirname, "check-values");
    const names = readdirSync(folder).filter((name) => name.endsWith(".json") && name !== "tsconfig.json");
    expect(files.map(({ name }) => `${name}.json`)).toEqual(names.sort());
    expect(compareAll(host, files)).toHaveLength(files.reduce((sum, { rows }) => sum + rows.length, 0));
  });

  it("cite keys that docs/sources.md resolves: none is missing there", () => {
    const page = readFileSync(path.join(import.meta.dirname, "../docs/sources.md"), "utf8");
    const defined = new Set([...page.matchAll(/^- \[([^\]]+)\]/gm)].map(([, key]) => key));
    const cited = files.flatMap(({ source }) => [...source.matchAll(/\[([^\]]+)\]/g)].map(([, key]) => key));
    expect(cited.filter((key) => !defined.has(key))).toEqual([]);
    expect(new Set(cited).size).toBeGreaterThan(20);
  });

  const sound: CheckFile = {
    name: "sound", about: "a", source: "[epa-120.1]", page: "c", standing: "published", unit: "mS/cm", function: "ECAT25",
    rows: [{ given: [1.305, 21], expected: 1.413, tolerance: 0.0011 }],
  };
  it.each([
    ["unknown standing \"rumour\"", { ...sound, standing: "rumour" }],
    ["no rows", { ...sound, rows: [] }],
    ["unknown function \"ECAT99\"", { ...sound, function: "ECAT99" }],
    ["an empty source", { ...sound, source: " " }],
    ["row 1: no tolerance above 0", { ...sound, rows: [{ given: [1], expected: 1, tolerance: 0 }] }],
    ["row 1: no tolerance above 0", { ...sound, rows: [{ given: [1], expected: 1 }] }],
    ["row 1: a tolerance above a tenth of the value", { ...sound, rows: [{ given: [1], expected: 1, tolerance: 0.11 }] }],
    ["a source that begins with no key", { ...sound, source: "a table somewhere" }],
    ["row 1: nothing given", { ...sound, rows: [{ given: [], expected: 1, tolerance: 0.1 }] }],
  ])("a check file has the fault: %s", (fault, file) => {
    expect(faultsOf(sound, host.ids)).toEqual([]);
    expect(faultsOf(file as CheckFile, host.ids)).toEqual([fault]);
  });

  it("compare: an answer 0.0012 from an expected 1.413 fails at a tolerance of 0.0011", () => {
    const row = { given: [1.305, 21], expected: 1.413 + 0.0012, tolerance: 0.0011 };
    expect(compare(host, sound, row).within).toBe(false);
    expect(compare(host, sound, { ...row, expected: "good" }).within).toBe(false);
  });
});
