import { describe, expect, test } from "vitest";
import { ecFromNewColumns, offersFor } from "../../../taskpane/formulas/offers";
import { addColumns } from "../../../taskpane/sheet/add-columns";
import { noChoices } from "../../../taskpane/choices";
import { rootZoneOf } from "../../../taskpane/root-zone";
import { readSelection } from "../../../taskpane/sheet/read-selection";
import { selectedPlace } from "../../../taskpane/sheet/selected-place";
import { areaAt } from "../../../workbench/host/excel/area";
import { bench, benchLog, zoneAt } from "../sheet/bench-log";

const missing = (offers: ReturnType<typeof offersFor>): Record<string, string | undefined> =>
  Object.fromEntries(offers.map(({ column, missing: lacks }) => [column.header, lacks]));

describe("what is offered for a log without temperatures", () => {
  test("all but VPD; with a meter that does not compensate nothing that rests on EC", async () => {
    const zone = await zoneAt(bench());
    expect(Object.entries(missing(offersFor(zone, false))).filter(([, lacks]) => lacks !== undefined)).toEqual([
      ["VPD (kPa)", "needs a column of air temperature and humidity"],
    ]);
    const lacking = missing(offersFor(zone, true));
    expect(lacking["Salt ratio"]).toBe("needs a column of solution temperature");
    expect(lacking["Input EC at 25 C (mS/cm)"]).toBe("needs a column of solution temperature");
    expect(lacking["pH shift"]).toBeUndefined();
  });
});

test("a column that the log has already is not offered again", async () => {
  const offered = missing(offersFor(await zoneAt(bench(benchLog.map((row, i) => [...row, i === 0 ? "salt ratio" : 2]))), false));
  expect(offered["Salt ratio"]).toBe("is there already");
});

describe("a meter that does not compensate", () => {
  const warm = benchLog.map((row, i) => [...row, i === 0 ? "Solution temp (°C)" : 21]);

  test("its readings at 21 C get columns at 25 C, and the log is then read from those: 3000 uS/cm as its formula shows it", async () => {
    const host = bench(warm, { compute: (formula) => [[formula.includes("D2") ? 3.25 : formula.includes("D") ? 3 : 1.7]] });
    const zone = await zoneAt(host);
    const wanted = offersFor(zone, true).map(({ column }) => column).slice(0, 2);
    await addColumns(zone, wanted, { band: undefined, uncompensated: true });
    expect(host.store.formulas(areaAt(host.sheetId, 1, 8, 1, 2))).toEqual([[
      '=RUNOFF.ECAT25(RUNOFF.READING(B2,"mS/cm"),RUNOFF.READING(H2,"C"))', '=RUNOFF.ECAT25(RUNOFF.READING(D2,"uS/cm"),RUNOFF.READING(H2,"C"))',
    ]]);
    const selection = await readSelection(await selectedPlace());
    const choices = { ...noChoices, ...ecFromNewColumns(rootZoneOf(selection, noChoices)) };
    const read = rootZoneOf(selection, choices).reading;
    expect(read.questions).toEqual([]);
    expect(read.columns.filter(({ read: isRead, quantity }) => isRead && quantity.endsWith("EC")).map(({ header }) => header)).toEqual([
      "Input EC at 25 C (mS/cm)", "Runoff EC at 25 C (mS/cm)",
    ]);
    expect(read.rows.map(({ runoffEc }) => runoffEc)).toEqual([3.25, 3, 3]);
  });

  test("without such columns nothing is answered for the person", async () => {
    expect(ecFromNewColumns(await zoneAt(bench()))).toEqual({});
  });
});
