import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sampleFiles, sampleWorkbooks } from "../../sample-workbooks/index";
import { partsOf, storedCells } from "./parts";

const installed = spawnSync("soffice", ["--version"]).status === 0;
if (!installed) process.stderr.write("\nSKIPPED: no LibreOffice (soffice) on this machine: the sample workbooks are not opened in it\n\n");

const scratch = mkdtempSync(path.join(tmpdir(), "runoff-office-"));
afterAll(() => {
  rmSync(scratch, { recursive: true });
});

it("has LibreOffice wherever CI=true", () => {
  expect(installed || process.env["CI"] !== "true").toBe(true);
});

describe.runIf(installed)("LibreOffice opens the preview of", () => {
  beforeAll(async () => {
    const books = [...(await sampleFiles({ variant: "preview" }))].filter(([name]) => name.endsWith(".xlsx"));
    for (const [name, bytes] of books) writeFileSync(path.join(scratch, name), bytes);
    const profile = `-env:UserInstallation=${pathToFileURL(path.join(scratch, "profile")).href}`;
    // The token asks for every sheet as a .csv of its own, cells as shown.
    const asCsv = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";
    execFileSync("soffice", [profile, "--headless", "--convert-to", asCsv, "--outdir", scratch, ...books.map(([name]) => path.join(scratch, name))], { stdio: "ignore" });
  }, 120_000);

  it.each(Object.entries(sampleWorkbooks))("%s, and shows every sheet with as many filled rows as were written", (name, { sheets }) => {
    const parts = partsOf(new Uint8Array(readFileSync(path.join(scratch, `${name}.xlsx`))));
    sheets.forEach((sheet, i) => {
      const shown = parse(readFileSync(path.join(scratch, `${name}-${sheet.name}.csv`)), { relax_column_count: true, skip_empty_lines: false });
      const filled = storedCells(parts, `xl/worksheets/sheet${i + 1}.xml`).filter(({ value }) => value !== undefined);
      const rows = filled.map(({ at }) => Number(/\d+/.exec(at)?.[0]));
      expect(shown).toHaveLength(Math.max(...rows));
    });
  });

  it("salt-buildup, and shows its first row as the log has it: 5 January 2026, 1.96 in, 1.78 out, ratio 1.78 / 1.96", () => {
    const [, first = []] = parse(readFileSync(path.join(scratch, "salt-buildup-Log.csv")));
    expect(first.slice(0, 4)).toEqual(["2026-01-05", "Pepper 2", "1.96", "1.78"]);
    expect(Number(first[10])).toBeCloseTo(1.78 / 1.96, 12);
  });
});
