import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ComputedColumn, computedColumns, type FormulaOptions } from "../../../taskpane/formulas/computed-columns";
import { addColumns } from "../../../taskpane/sheet/add-columns";
import { extendColumns, inRow } from "../../../taskpane/sheet/extend-columns";
import { SheetProblem } from "../../../taskpane/workbook";
import { areaAt } from "../../../workbench/host/excel/area";
import { bench, benchLog, filledCells, refusal, zoneAt } from "./bench-log";
import { times } from "../../laws/times";

const called = (...headers: string[]): ComputedColumn[] => computedColumns.filter(({ header }) => headers.includes(header));
const options: FormulaOptions = { band: '"coir, medium"', uncompensated: false };

describe("addColumns beside a plain range", () => {
  test("writes two columns into H and I: header, then a formula a row", async () => {
    const host = bench();
    const { words } = await addColumns(await zoneAt(host), called("Salt ratio", "pH shift"), options);
    expect(words).toBe("Put 2 columns on Log at H1:I4: Salt ratio, pH shift.");
    expect(host.store.formulas(areaAt(host.sheetId, 0, 7, 4, 2))).toEqual([
      ["Salt ratio", "pH shift"],
      ['=RUNOFF.SALTRATIO(RUNOFF.READING(D2,"uS/cm"),RUNOFF.READING(B2,"mS/cm"))', '=RUNOFF.PHSHIFT(RUNOFF.READING(E2,"pH"),RUNOFF.READING(C2,"pH"))'],
      ['=RUNOFF.SALTRATIO(RUNOFF.READING(D3,"uS/cm"),RUNOFF.READING(B3,"mS/cm"))', '=RUNOFF.PHSHIFT(RUNOFF.READING(E3,"pH"),RUNOFF.READING(C3,"pH"))'],
      ['=RUNOFF.SALTRATIO(RUNOFF.READING(D4,"uS/cm"),RUNOFF.READING(B4,"mS/cm"))', '=RUNOFF.PHSHIFT(RUNOFF.READING(E4,"pH"),RUNOFF.READING(C4,"pH"))'],
    ]);
    expect(host.store.numberFormats(areaAt(host.sheetId, 1, 7, 1, 2))).toEqual([["0.00", "+0.00;-0.00;0.00"]]);
    expect(host.store.look(0, 7, host.sheetId).bold).toBe(true);
  });

  test("goes past everything on the sheet when a note stands beside the log, and leaves the note", async () => {
    const host = bench(benchLog.map((row, i) => (i === 2 ? [...row, "", "bench 2"] : row)));
    const { words } = await addColumns(await zoneAt(host), called("Salt ratio", "pH shift"), options);
    expect(words).toContain("J1:K4");
    expect(host.store.values(areaAt(host.sheetId, 2, 8))).toEqual([["bench 2"]]);
  });

  test("leaves a row that is no reading, an average at the foot, without formulas", async () => {
    const host = bench([...benchLog, ["average", 1.57, 5.83, 2867, 5.63, 2, 0.47]]);
    await addColumns(await zoneAt(host), called("Salt ratio"), options);
    expect(host.store.formulas(areaAt(host.sheetId, 4, 7))).toEqual([[""]]);
  });

  test("names a cell that the pane leaves out, a runoff EC of 3 among thousands of uS/cm, because the formula takes it", async () => {
    const host = bench([...benchLog, [46_088, 1.6, 5.8, 3, 6, 2, 0.5]]);
    const { words } = await addColumns(await zoneAt(host), called("Salt ratio"), options);
    expect(words).toContain("Look at one cell that the pane could not believe or read (D5): mend them, and the formulas follow.");
  });

  test("refuses a second time: the column is there already", async () => {
    const host = bench();
    const zone = await zoneAt(host);
    await addColumns(zone, called("Salt ratio"), options);
    expect(await refusal(() => addColumns(zone, called("Salt ratio"), options))).toBe('There is a column "Salt ratio" already, at H1. Nothing was written.');
  });

  test("refuses on a protected sheet, and while a cell is edited, in words; nothing is written", async () => {
    const host = bench();
    const zone = await zoneAt(host);
    const before = filledCells(host.store, host.sheetId);
    host.records.sheet(host.sheetId).protected = true;
    expect(await refusal(() => addColumns(zone, called("Salt ratio"), options))).toMatch(/protected.*Unprotect/);
    host.records.sheet(host.sheetId).protected = false;
    host.switches.cellEditing = true;
    expect(await refusal(() => addColumns(zone, called("Salt ratio"), options))).toMatch(/being edited.*Enter or Escape/);
    host.switches.cellEditing = false;
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
  });

  test("take back leaves the sheet as it was, and is refused once a cell of it was changed", async () => {
    const host = bench();
    const zone = await zoneAt(host);
    const before = filledCells(host.store, host.sheetId);
    const first = await addColumns(zone, called("Salt ratio"), options);
    expect(await first.takeBack()).toBe("Taken back: H1:H4 of Log is empty again.");
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
    const second = await addColumns(zone, called("Salt ratio"), options);
    host.store.type(areaAt(host.sheetId, 2, 7), 2);
    expect(await refusal(second.takeBack)).toMatch(/changed since/);
    expect(host.store.values(areaAt(host.sheetId, 2, 7))).toEqual([[2]]);
  });
});

describe("addColumns in a Table", () => {
  const inTable = (headers: readonly string[] = benchLog[0] as string[], beside?: string): ReturnType<typeof bench> => {
    const host = bench([headers, ...benchLog.slice(1)].map((row, i) => (i === 2 && beside !== undefined ? [...row, beside] : row)));
    host.records.tables.push({ id: "t", name: "Waterings", area: areaAt(host.sheetId, 0, 0, 4, 7), columns: [...headers], showTotals: false, style: "" });
    return host;
  };

  test("widens it by two columns with the same structured formula in each row", async () => {
    const host = inTable();
    const { words } = await addColumns(await zoneAt(host), called("pH shift", "Row flags"), options);
    expect(words).toBe("Put pH shift, Row flags into the Table Waterings on Log, at H1:I4. New rows take them on.");
    const [table] = host.records.tables;
    expect([table?.area.columnCount, table?.columns.slice(7)]).toEqual([9, ["pH shift", "Row flags"]]);
    const shift = '=RUNOFF.PHSHIFT(RUNOFF.READING(Waterings[@[Runoff pH]],"pH"),RUNOFF.READING(Waterings[@[Feed pH]],"pH"))';
    expect(host.store.formulas(areaAt(host.sheetId, 1, 7, 3, 1))).toEqual([[shift], [shift], [shift]]);
  });

  test("odd headers: brackets, quotes, #, a line break and a leading = are written so that they name the column", async () => {
    const host = inTable(["Date", "=Feed EC [mS/cm]", "grower's feed pH", "Runoff EC\n(uS/cm)", 'Runoff "pH" #1', "Fed (L)", "Drained (L)"]);
    await addColumns(await zoneAt(host), called("Salt ratio", "pH shift"), options);
    expect(host.store.formulas(areaAt(host.sheetId, 1, 7, 1, 2))).toEqual([[
      '=RUNOFF.SALTRATIO(RUNOFF.READING(Waterings[@[Runoff EC\n(uS/cm)]],"uS/cm"),RUNOFF.READING(Waterings[@[=Feed EC \'[mS/cm\']]],"mS/cm"))',
      "=RUNOFF.PHSHIFT(RUNOFF.READING(Waterings[@[Runoff \"pH\" '#1]],\"pH\"),RUNOFF.READING(Waterings[@[grower''s feed pH]],\"pH\"))",
    ]]);
  });

  test("refuses when a filled cell stands beside it, and leaves Table and cell", async () => {
    const host = inTable(undefined, "hand note");
    expect(await refusal(async () => addColumns(await zoneAt(host), called("Salt ratio"), options))).toBe(
      "H1:H4 is needed for this, and H3 is not empty. Nothing was written; make room there and try again.",
    );
    expect(host.records.tables[0]?.area.columnCount).toBe(7);
  });

  test("take back gives the Table its width again", async () => {
    const host = inTable();
    const before = filledCells(host.store, host.sheetId);
    const { takeBack } = await addColumns(await zoneAt(host), called("Salt ratio"), options);
    expect(await takeBack()).toContain("Waterings is as wide as before");
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
    expect(host.records.tables[0]?.area.columnCount).toBe(7);
  });

  test("a host that cannot widen a Table says so", async () => {
    const host = inTable();
    host.switches.missingApi = "ExcelApi 1.13";
    expect(await refusal(async () => addColumns(await zoneAt(host), called("Salt ratio"), options))).toMatch(/does not offer/);
  });
});

describe("extendColumns", () => {
  test("carries the last formula on into two rows added since, as the person changed it", async () => {
    const host = bench();
    await addColumns(await zoneAt(host), called("Row flags"), options);
    host.store.write(areaAt(host.sheetId, 3, 7), [[{ formula: '=RUNOFF.ROWFLAG(C4,B4,E4,IF(D4="","",D4/1000),"row 4 peat")' }]]);
    host.store.write(areaAt(host.sheetId, 4, 0, 2, 7), [[46_088, 1.6, 5.8, 2300, 6, 2, 0.5], [46_090, 1.6, 5.8, 2200, 6, 2, 0.5]]);
    const done = await extendColumns(await zoneAt(host));
    expect(done.words).toBe("Carried on into new rows of Log: H5:H6.");
    expect(host.store.formulas(areaAt(host.sheetId, 5, 7))).toEqual([['=RUNOFF.ROWFLAG(C6,B6,E6,IF(D6="","",D6/1000),"row 4 peat")']]);
    await done.takeBack();
    expect(host.store.formulas(areaAt(host.sheetId, 4, 7, 2, 1))).toEqual([[""], [""]]);
  });

  test("says when there is nothing to carry on", async () => {
    const host = bench();
    expect(await refusal(async () => extendColumns(await zoneAt(host)))).toMatch(/no computed columns/);
    await addColumns(await zoneAt(host), called("Salt ratio"), options);
    expect((await extendColumns(await zoneAt(host))).words).toMatch(/reach the last row already/);
  });

  test.each([
    ["=RUNOFF.ECAT25(B25,C25)", 24, 30, "=RUNOFF.ECAT25(B31,C31)"],
    ['=IF(D2="D2","",D2/2)+$D$2+D$2+D20', 1, 2, '=IF(D3="D2","",D3/2)+$D$2+D$2+D20'],
    ["=Log!D2+AA2", 1, 2, "=Log!D2+AA3"],
  ])("inRow: %s of row %i reads in row %i %s", (formula, from, to, expected) => {
    expect(inRow(formula, from, to)).toBe(expected);
  });
});

test("for any sheet, every cell filled before is the same after, whether the columns were written or refused", async () => {
  const cell = fc.oneof({ weight: 3, arbitrary: fc.constant("") }, fc.constant("note"), fc.integer(), fc.constant("=A1"), fc.boolean());
  const sheet = fc.array(fc.array(cell, { minLength: 7, maxLength: 12 }), { minLength: 1, maxLength: 5 });
  await fc.assert(
    fc.asyncProperty(sheet, fc.boolean(), async (noise, isTable) => {
      const host = bench([...benchLog, ...noise].map((row, i) => (i < 4 ? [...row, "", ...(noise[i]?.slice(7) ?? [])] : row)).map((row) =>
        [...row, ...Array.from({ length: Math.max(0, 13 - row.length) }, () => "")].slice(0, 13)));
      if (isTable) host.records.tables.push({ id: "t", name: "T", area: areaAt(host.sheetId, 0, 0, 4, 7), columns: benchLog[0] as string[], showTotals: false, style: "" });
      const before = filledCells(host.store, host.sheetId);
      try {
        const done = await addColumns(await zoneAt(host), called("Salt ratio", "pH shift"), options);
        expect(filledCells(host.store, host.sheetId)).toMatchObject(before);
        await done.takeBack();
      } catch (problem) {
        if (!(problem instanceof SheetProblem)) throw problem;
      }
      expect(filledCells(host.store, host.sheetId)).toEqual(before);
    }),
    times(40),
  );
});
