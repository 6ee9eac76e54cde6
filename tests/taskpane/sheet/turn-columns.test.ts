import { describe, expect, test } from "vitest";
import { bandFor } from "../../../src/index";
import {
  type ComputedColumn, computedColumns, type FormulaKind, type FormulaOptions,
} from "../../../taskpane/formulas/computed-columns";
import { ecFromNewColumns, offersFor, optionsFor } from "../../../taskpane/formulas/offers";
import { forPot, noChoices } from "../../../taskpane/choices";
import { rootZoneOf } from "../../../taskpane/root-zone";
import { addColumns } from "../../../taskpane/sheet/add-columns";
import { extendColumns } from "../../../taskpane/sheet/extend-columns";
import { markRows } from "../../../taskpane/sheet/mark-rows";
import { turnColumns } from "../../../taskpane/sheet/turn-columns";
import { areaAt } from "../../../workbench/host/excel/area";
import { bench, benchLog, filledCells, refusal, zoneAt } from "./bench-log";

type Bench = ReturnType<typeof bench>;

const called = (...headers: string[]): ComputedColumn[] =>
  computedColumns.filter(({ header }) => headers.includes(header));
const options = (kind: FormulaKind): FormulaOptions =>
  ({ band: '"coir, medium"', limits: bandFor("coir"), uncompensated: false, kind });
const everything = computedColumns.filter(({ header }) => header !== "VPD (kPa)");

async function withColumns(kind: FormulaKind, columns = everything, host = bench()): Promise<Bench> {
  await addColumns(await zoneAt(host), columns, options(kind));
  return host;
}

const other = { functions: "plain", plain: "functions" } as const;

describe.each(["functions", "plain"] as const)("columns as %s", (kind) => {
  test("turned, hold what the other kind writes from the start, in all 18 cells; turned back, as before", async () => {
    const written = await withColumns(other[kind]);
    const wanted = filledCells(written.store, written.sheetId);
    const host = await withColumns(kind);
    const zone = await zoneAt(host);
    const before = filledCells(host.store, host.sheetId);
    const { words } = await turnColumns(zone, other[kind]);
    expect(words).toMatch(/^Turned 18 formulas into (plain formulas|functions), on Log at H2:H4, /);
    const now = filledCells(host.store, host.sheetId);
    expect(Object.values(now)).toEqual(Object.values(wanted));
    expect(Object.values(now)).not.toEqual(Object.values(before));
    await turnColumns(zone, kind);
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
  });

  test("taken back, hold what they held", async () => {
    const host = await withColumns(kind);
    const before = filledCells(host.store, host.sheetId);
    const done = await turnColumns(await zoneAt(host), other[kind]);
    await done.takeBack();
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
  });

  test("a formula that was changed by hand and a figure typed in its place stay, and the formula is named", async () => {
    const host = await withColumns(kind, called("Salt ratio"));
    const own = `${String(host.store.formulas(areaAt(host.sheetId, 2, 7))[0]?.[0])}*1.02`;
    host.store.write(areaAt(host.sheetId, 2, 7, 2, 1), [[{ formula: own }], [1.9]]);
    const { words } = await turnColumns(await zoneAt(host), other[kind]);
    expect(words).toContain("Turned one formula");
    expect(words).toContain("Left as it stands, changed by hand or made for other limits: H3.");
    expect(host.store.formulas(areaAt(host.sheetId, 2, 7, 2, 1))).toEqual([[own], [1.9]]);
  });

  test("flags made for other limits stay, and are named", async () => {
    const host = bench();
    const limits = { ...options(kind), band: '"peat, medium"', limits: bandFor("peat") };
    await addColumns(await zoneAt(host), called("Row flags"), limits);
    const before = filledCells(host.store, host.sheetId);
    const { words } = await turnColumns(await zoneAt(host), other[kind]);
    expect(words).toMatch(/^No formula of Log is left to turn.*made for other limits: H2, H3, H4\.$/);
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
  });
});

test("an average that a person put under a column of ours is no formula of ours and is not named", async () => {
  const host = await withColumns("functions", called("Salt ratio"));
  host.store.write(areaAt(host.sheetId, 5, 7), [[{ formula: "=AVERAGE(H2:H4)" }]]);
  const { words } = await turnColumns(await zoneAt(host), "plain");
  expect(words).toBe("Turned 3 formulas into plain formulas, on Log at H2:H4.");
  expect(host.store.formulas(areaAt(host.sheetId, 5, 7))).toEqual([["=AVERAGE(H2:H4)"]]);
});

test("without computed columns it says to add them first", async () => {
  const said = await refusal(async () => turnColumns(await zoneAt(bench()), "plain"));
  expect(said).toBe("There are no computed columns beside this log yet. Add them first.");
});

test("in a Table the columns turn with their names, and the Table stays as it is", async () => {
  const host = bench();
  await host.run(async (context) => {
    const range = context.workbook.worksheets.getActiveWorksheet().getRange("A1:G4");
    context.workbook.tables.add(range, true).name = "Waterings";
    await context.sync();
  });
  await withColumns("functions", called("Salt ratio"), host);
  const { words } = await turnColumns(await zoneAt(host), "plain");
  expect(words).toBe("Turned 3 formulas into plain formulas, on Log at H2:H4.");
  const [[formula] = []] = host.store.formulas(areaAt(host.sheetId, 1, 7));
  expect(formula).toContain("Waterings[@[Runoff EC (uS/cm)]]/1000");
  expect(formula).not.toContain("RUNOFF");
});

describe("a meter that does not compensate", () => {
  const warm = benchLog.map((row, i) => [...row, i === 0 ? "Solution temp (°C)" : 21]);

  test("EC at 25 C and the ratio made beside it turn, though the log is read from the new columns since", async () => {
    const host = bench(warm, { compute: () => [[1.7]] });
    const zone = await zoneAt(host);
    const wanted = offersFor(zone, true).map(({ column }) => column).slice(0, 3);
    await addColumns(zone, wanted, optionsFor(zone, true));
    const read = await zoneAt(host);
    const coir = { ...noChoices, ...forPot(noChoices, undefined, { medium: "coir" }) };
    const since = rootZoneOf(read.selection, { ...coir, ...ecFromNewColumns(read) });
    const runoff = since.reading.columns.find(({ quantity }) => quantity === "runoff EC");
    expect(runoff?.header).toBe("Runoff EC at 25 C (mS/cm)");
    const { words } = await turnColumns(since, "plain");
    expect(words).toBe("Turned 9 formulas into plain formulas, on Log at I2:I4, J2:J4, K2:K4.");
    expect(String(host.store.formulas(areaAt(host.sheetId, 1, 10))[0]?.[0])).toContain("(1+0.0191*(H2-25))");
  });
});

test("plain formulas are carried on into new rows, and rows are marked by plain flags", async () => {
  const host = await withColumns("plain", called("Salt ratio", "Row flags"));
  host.store.write(areaAt(host.sheetId, 4, 0, 1, 7), [[46_088, 1.6, 5.8, 2500, 6.1, 2, 0.5]]);
  expect((await extendColumns(await zoneAt(host))).words).toBe("Carried on into new rows of Log: H5, I5.");
  expect(String(host.store.formulas(areaAt(host.sheetId, 4, 7))[0]?.[0])).toContain("(D5/1000)/B5");
  expect((await markRows(await zoneAt(host))).words).toContain("Marked the rows of Log");
});
