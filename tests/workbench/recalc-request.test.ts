import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { recalcRequest, UsageProblem } from "../../workbench/recalc-request";

const folder = mkdtempSync(path.join(tmpdir(), "recalc-request-"));
beforeAll(() => {
  mkdirSync(path.join(folder, "sub"));
  for (const name of ["log.xlsx", "taken.xlsx"]) writeFileSync(path.join(folder, name), "");
  symlinkSync(path.join(folder, "log.xlsx"), path.join(folder, "link.xlsx"));
  symlinkSync(folder, path.join(folder, "sub", "up"));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

test("paths count from the folder the person stands in; blanks are delivered as zero unless said otherwise", async () => {
  expect(await recalcRequest(["log.xlsx", "--out", "sub/new.xlsx", "--json"], folder)).toEqual({
    file: path.join(folder, "log.xlsx"),
    out: path.join(folder, "sub", "new.xlsx"),
    blank: "zero",
    json: true,
  });
  expect((await recalcRequest(["log.xlsx", "--blank=empty"], folder)).blank).toBe("empty");
});

describe("is refused with one line of usage", () => {
  test.each([
    ["no file", [], "one file is wanted, 0 are given"],
    ["two files", ["log.xlsx", "taken.xlsx"], "one file is wanted, 2 are given"],
    ["an unknown option", ["log.xlsx", "--bogus"], "'--bogus'"],
    ["an unknown delivery", ["log.xlsx", "--blank", "none"], "--blank is one of zero, null, empty, not none"],
    ["an option without its value", ["log.xlsx", "--out"], "--out"],
    ["the file itself", ["log.xlsx", "--out", "log.xlsx"], "is the file itself"],
    ["the file itself by another way", ["log.xlsx", "--out", "sub/../log.xlsx"], "is the file itself"],
    ["the file itself through a linked folder", ["log.xlsx", "--out", "sub/up/log.xlsx"], "is the file itself"],
    ["a link to the file", ["log.xlsx", "--out", "link.xlsx"], "is the file itself"],
    ["the file when a link to it is read", ["link.xlsx", "--out", "log.xlsx"], "is the file itself"],
    ["a file that is there", ["log.xlsx", "--out", "taken.xlsx"], "already there"],
    ["a folder that is not there", ["log.xlsx", "--out", "nowhere/new.xlsx"], "which is not there"],
    ["another ending", ["log.xlsx", "--out", "new.csv"], "--out must end in .xlsx"],
  ])("%s", async (_, args, says) => {
    const problem: unknown = await recalcRequest(args, folder).catch((thrown: unknown) => thrown);
    expect(problem).toBeInstanceOf(UsageProblem);
    expect((problem as UsageProblem).message).toContain(says);
    expect((problem as UsageProblem).message).toMatch(/^[^\n]*usage: npm run recalc -- FILE\.xlsx[^\n]*$/u);
  });
});
