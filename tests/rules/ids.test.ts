import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { distFolder, loadBundle } from "../../workbench/host/load-bundle";
import { idProblems } from "./id-problems";

const { functions } = loadBundle().metadata;
const helpPage = readFileSync(path.join(distFolder, "docs", "functions.html"), "utf8");
const longestDescription = 254;

describe.each(functions.map((fn) => [fn.id, fn] as const))("%s", (id, fn) => {
  it("has an id that a workbook can keep for years", () => {
    expect(idProblems(id)).toEqual([]);
    expect(fn.name).toBe(id);
  });

  it("has a tooltip of one line under 255 letters", () => {
    expect(fn.description.trim()).not.toBe("");
    expect(fn.description).not.toContain("\n");
    expect(fn.description.length).toBeLessThanOrEqual(longestDescription);
  });

  it("says unit and meaning of each argument", () => {
    for (const { name, description } of fn.parameters) expect(description.trim(), name).not.toBe("");
    for (const { description } of fn.parameters) expect(description).not.toMatch(/\[object|\n/);
  });

  it("has its help where its help link points", () => {
    expect(fn.helpUrl).toBe(`https://localhost:3000/docs/functions.html#${id.toLowerCase()}`);
    expect(helpPage).toMatch(new RegExp(`<h3 id="?${id.toLowerCase()}"?>`));
  });
});

describe("the check of ids finds", () => {
  it.each([
    ["EC25", "looks like a cell address"],
    ["PHS7", "looks like a cell address"],
    ["XFD1048576", "looks like a cell address"],
    ["R1C1", "R1C1"],
    ["RC", "R1C1"],
    ["VAR", "built-in"],
    ["SLOPE", "built-in"],
    ["EC", "fewer than three letters"],
    ["EC.AT", "A to Z"],
    ["EC2MS", "A to Z"],
    ["ecat", "A to Z"],
  ])("%s", (id, problem) => {
    expect(idProblems(id).join("; ")).toContain(problem);
  });

  it.each(["ECAT25", "XFE1", "XFD1048577", "DLI", "VPD"])("nothing in %s", (id) => {
    expect(idProblems(id)).toEqual([]);
  });
});
