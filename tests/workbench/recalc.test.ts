import { execFile, spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { rawWorkbook, type RawSheet } from "./files/raw-workbook";

const folder = mkdtempSync(path.join(tmpdir(), "recalc-"));
const log = path.join(folder, "log.xlsx");

/** A bench of two peppers and a tomato: 3 / 1.5 = 2, 2.5 / 2 = 1.25, an impossible input EC, a row without readings. */
const rows = [
  '<row r="1"><c r="A1"><v>3</v></c><c r="B1"><v>1.5</v></c><c r="C1" cm="1"><f t="array" ref="C1:C2">_xldudf_RUNOFF_SALTRATIO(A1:A4,B1:B4)</f><v>0</v></c><c r="D1"><f>1/3</f></c></row>',
  '<row r="2"><c r="A2"><v>2.5</v></c><c r="B2"><v>2</v></c><c r="C2"><v>0</v></c></row>',
  '<row r="3"><c r="A3"><v>2</v></c><c r="B3"><v>-1</v></c><c r="D3"><f>SUM(A1:A3)/3</f></c></row>',
].join("");

beforeAll(() => {
  writeFileSync(log, rawWorkbook({ sheets: [{ name: "Bench 1", rows }, { name: "Notes", rows: "" }] }));
  writeFileSync(path.join(folder, "broken.xlsx"), "not a workbook");
  const one = (formula: string): RawSheet[] => [{ name: "Log", rows: `<row r="1"><c r="A1"><f>${formula}</f></c></row>` }];
  writeFileSync(path.join(folder, "deep.xlsx"), rawWorkbook({ sheets: one(`${"-".repeat(8000)}1`) }));
  const ring = '<definedName name="Salt">Ratio</definedName><definedName name="Ratio">Salt</definedName>';
  writeFileSync(path.join(folder, "ring.xlsx"), rawWorkbook({ sheets: one("Salt+1"), names: ring }));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

interface Outcome {
  readonly code: number | string | null | undefined;
  readonly out: string;
  readonly said: string;
}

/** Runs the command as npm does; one that does not end by itself is ended after a minute, which fails the test. */
function recalc(...args: string[]): Promise<Outcome> {
  const command = [path.resolve("tools/run.js"), "workbench/recalc.ts", ...args];
  const options = { env: { ...process.env, INIT_CWD: folder } };
  return new Promise((resolve) => {
    execFile(process.execPath, command, options, (problem, out, said) => {
      resolve({ code: problem === null ? 0 : problem.code, out, said });
    });
  });
}

describe("npm run recalc", () => {
  test("--json prints one object: each sheet, each formula cell, each spilled cell; an error with its reason; the same for all blanks", async () => {
    const [zero, none, empty] = await Promise.all(["zero", "null", "empty"].map((blank) => recalc("log.xlsx", "--json", "--blank", blank)));
    expect(zero).toMatchObject({ code: 0, said: "" });
    const reason = expect.stringContaining("-1 mS/cm") as string;
    expect(JSON.parse(zero?.out ?? "")).toEqual({
      "Bench 1": { C1: 2, C2: 1.25, C3: { error: "#VALUE!", reason }, C4: "", D1: 1 / 3, D3: 2.5 },
      Notes: {},
    });
    expect([none?.out, empty?.out]).toEqual([zero?.out, zero?.out]);
  });

  test("without it a table names each cell, its value, and the formula behind it", async () => {
    const { code, out } = await recalc("log.xlsx");
    expect(code).toBe(0);
    expect(out).toMatch(/^Bench 1$/mu);
    expect(out).toMatch(/^ {2}C1 +2 +=RUNOFF\.SALTRATIO\(A1:A4,B1:B4\)$/mu);
    expect(out).toMatch(/^ {2}C2 +1\.25 +part of C1$/mu);
    expect(out).toMatch(/^ {2}D1 +0\.3333333333 +=1\/3$/mu);
    expect(out).toMatch(/^ {2}D3 +2\.5 +=SUM\(A1:A3\)\/3$/mu);
    expect(out).toMatch(/^6 cells computed on 1 sheets?, 1 with an error$/mu);
  });

  test("--out writes a copy that computes the same, once, and leaves the file as it was", async () => {
    const before = readFileSync(log);
    expect(await recalc("log.xlsx", "--json", "--out", "copy.xlsx")).toMatchObject({ code: 0 });
    expect(readFileSync(log)).toEqual(before);
    const [again, twice] = await Promise.all([recalc("copy.xlsx", "--json"), recalc("log.xlsx", "--out", "copy.xlsx")]);
    expect(JSON.parse(again.out)).toMatchObject({ "Bench 1": { C1: 2, C2: 1.25, C4: "", D3: 2.5 } });
    expect(twice).toMatchObject({ code: 2, out: "" });
  });

  test.each([
    ["a broken file", ["broken.xlsx", "--json"], "recalc: broken.xlsx: it is not an .xlsx workbook\n"],
    ["8,000 signs before a number", ["deep.xlsx"], "recalc: formulas or names of it are nested deeper than can be computed\n"],
    ["names that name each other", ["ring.xlsx"], "recalc: formulas or names of it are nested deeper than can be computed\n"],
    ["a file that is not there", ["none.xlsx"], "recalc: none.xlsx: there is no such file\n"],
    ["an unknown option", ["log.xlsx", "--fast"], "[--blank zero|null|empty]\n"],
  ])("%s gives one line on standard error, nothing on standard output, and exit code 2", async (_, args, says) => {
    const { code, out, said } = await recalc(...args);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(said.endsWith(says)).toBe(true);
    expect(said.split("\n")).toHaveLength(2);
    expect(existsSync(path.join(folder, "none.xlsx"))).toBe(false);
  });

  test("killed at eight moments it leaves a copy that is absent or whole, the file as it was, and at the end nothing beside them", async () => {
    const before = readFileSync(log);
    const [place, whole] = [path.join(folder, "killed"), path.join(folder, "whole.xlsx")];
    mkdirSync(place);
    expect(await recalc("log.xlsx", "--out", "whole.xlsx")).toMatchObject({ code: 0 });
    const out = path.join(place, "copy.xlsx");
    for (const milliseconds of [100, 250, 300, 350, 400, 450, 500, 600]) {
      const args = [path.resolve("tools/run.js"), "workbench/recalc.ts", log, "--out", out];
      const child = spawn(process.execPath, args, { stdio: "ignore" });
      const ended = new Promise((resolve) => child.once("close", resolve));
      await wait(milliseconds);
      child.kill("SIGKILL");
      await ended;
      if (existsSync(out)) expect(readFileSync(out)).toEqual(readFileSync(whole));
      rmSync(out, { force: true });
    }
    writeFileSync(path.join(place, ".copy.xlsx.2147483646.part"), "half of a copy");
    expect(await recalc("log.xlsx", "--out", out)).toMatchObject({ code: 0 });
    expect(readdirSync(place)).toEqual(["copy.xlsx"]);
    expect(readFileSync(log)).toEqual(before);
  });
});
