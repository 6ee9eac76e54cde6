import { beforeAll, describe, expect, it, test } from "vitest";
import { bandFor, columnLetters } from "../../src/index";
import { readXlsx } from "../../workbench/files/read-xlsx";
import { computeBook } from "../../workbench/engine/compute";
import { type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { bookOf } from "../workbench/book-of";
import { computedByLibreOffice, hasLibreOffice } from "../workbench/engine/libre-office";
import { formulasOf, type LogWithFormulas, workbookOf } from "./plain-log-sheet";
import { type PlainLog, randomLogs, sampleLogs } from "./plain-logs";

const relative = 1e-9;
const limits = { band: '"coir, medium"', limits: bandFor("coir", "medium") };
const { host, metadata } = loadBundle();

const found = hasLibreOffice();
if (!found) process.stderr.write("\nSKIPPED: no LibreOffice (soffice): the plain columns are NOT held against the functions\n\n");

it("has LibreOffice wherever CI=true", () => {
  expect(found || process.env["CI"] !== "true").toBe(true);
});

/** What the functions answer, where a cell of words stands for a blank: a plain formula cannot read it. */
async function answered(log: PlainLog): Promise<CellValue[]> {
  const formulas = formulasOf(log, "functions", limits);
  const cells: Record<string, CellValue> = Object.fromEntries(formulas.map(({ cell, formula }) => [cell, formula]));
  for (const [row, values] of log.rows.entries()) {
    for (const [column, value] of values.entries()) {
      if (typeof value !== "string" && value !== undefined) cells[`${columnLetters(column)}${row + 1}`] = value;
    }
  }
  const [sheet] = await computeBook(bookOf({ Log: cells }), host, metadata);
  return formulas.map(({ cell }) => sheet?.values.get(cell));
}

type Shown = number | string;

function shown(value: CellValue): Shown {
  if (typeof value === "object") return "an error";
  return typeof value === "number" || typeof value === "string" ? value : String(value ?? "");
}

function alike(ours: Shown, theirs: Shown): boolean {
  if (typeof ours !== "number" || typeof theirs !== "number") return ours === theirs;
  return Math.abs(ours - theirs) <= relative * Math.max(1, Math.abs(ours));
}

const kindOf = (value: Shown): "numbers" | "blanks" | "errors" | "words" => {
  if (typeof value === "number") return "numbers";
  if (value === "") return "blanks";
  return value === "an error" ? "errors" : "words";
};

describe.runIf(found)("columns as plain formulas, computed by LibreOffice, against the functions, to 1e-9", () => {
  let logs: readonly LogWithFormulas[] = [];
  let theirs: readonly ReadonlyMap<string, { readonly value?: CellValue }>[] = [];

  beforeAll(async () => {
    const all = [...(await sampleLogs()), ...randomLogs(16, 20_260_301)];
    logs = all.map((log) => ({ log, formulas: formulasOf(log, "plain", limits) }));
    theirs = (await readXlsx(await computedByLibreOffice(workbookOf(logs)))).sheets.map(({ cells }) => cells);
  }, 240_000);

  test("every number, blank, error and flag is the same in every row of 5 sample logs and 16 random ones", async () => {
    const different: unknown[] = [];
    const seen = { numbers: 0, blanks: 0, errors: 0, words: 0 };
    for (const [n, { log, formulas }] of logs.entries()) {
      const ours = (await answered(log)).map(shown);
      for (const [place, { cell, header, row, formula }] of formulas.entries()) {
        const [one, other] = [ours[place] ?? "", shown(theirs[n]?.get(cell)?.value)];
        seen[kindOf(one)] += 1;
        if (alike(one, other)) continue;
        different.push({ log: log.name, header, units: log.columns.join(" | "), row: log.rows[row], one, other, formula });
      }
    }
    expect(different.slice(0, 3)).toEqual([]);
    expect(seen.numbers).toBeGreaterThan(5000);
    expect(Math.min(seen.blanks, seen.errors, seen.words)).toBeGreaterThan(500);
  }, 120_000);

  test("a formula fits into a cell of any Excel, and calls what Excel 2007 has", () => {
    const all = logs.flatMap(({ formulas }) => formulas.map(({ formula }) => formula));
    expect(Math.max(...all.map(({ length }) => length))).toBeLessThanOrEqual(8192);
    const called = new Set(all.flatMap((formula) => [...formula.matchAll(/([A-Z.]+)\(/g)].map(([, name]) => name)));
    const known = ["AND", "EXP", "IF", "ISERROR", "ISNUMBER", "NA", "NOT", "OR", "SUBSTITUTE", "TRIM"];
    expect([...called].sort()).toEqual(known);
  });
});
