import { describe, expect, test } from "vitest";
import { bandFor, type ColumnReading, ec25, type LogQuantity, type LogUnit, ownBand, ph, readLog } from "../../../src/index";
import { bandText } from "../../../taskpane/formulas/band-text";
import { formulaFor, whatIsMissing } from "../../../taskpane/formulas/column-formula";
import { compensatedColumns, type ComputedColumn, computedColumns } from "../../../taskpane/formulas/computed-columns";
import { inThisRow, logCells } from "../../../taskpane/formulas/log-cell";
import { computeBook } from "../../../workbench/engine/compute";
import type { CellValue } from "../../../workbench/host/functions-host";
import { loadBundle } from "../../../workbench/host/load-bundle";
import { bookOf } from "../../workbench/book-of";

const { host, metadata } = loadBundle();

/** One row of a log: each reading in a column of its own from A on. */
type Row = readonly (readonly [LogQuantity, LogUnit, CellValue])[];

const columnsOf = (row: Row): ColumnReading[] =>
  row.map(([quantity, unit], column) => ({ column, header: quantity, quantity, unit, why: "", read: true, letters: "" }));

const plain = { band: '"coir, medium"', uncompensated: false };
const columnCalled = (header: string): ComputedColumn => {
  const found = [...computedColumns, ...Object.values(compensatedColumns)].find((each) => each.header === header);
  if (found === undefined) throw new Error(`no column ${header}`);
  return found;
};

function formulaIn(header: string, row: Row, options = plain): string {
  return formulaFor(columnCalled(header), logCells(columnsOf(row), (column) => `${"ABCDEFGH".charAt(column)}2`), options);
}

async function answer(header: string, row: Row, options = plain): Promise<CellValue> {
  const cells = Object.fromEntries(row.flatMap(([, , value], i) => (value === undefined ? [] : [[`${"ABCDEFGH".charAt(i)}2`, value]])));
  const [sheet] = await computeBook(bookOf({ Log: { ...cells, Z2: formulaIn(header, row, options) } }), host, metadata);
  return sheet?.values.get("Z2");
}

describe("the formula of a computed column", () => {
  test.each([
    ["mS/cm and dS/m", "Salt ratio", [["runoff EC", "mS/cm", 3], ["input EC", "dS/m", 1.5]], '=RUNOFF.SALTRATIO(RUNOFF.READING(A2,"mS/cm"),RUNOFF.READING(B2,"dS/m"))', 2],
    ["uS/cm", "Salt ratio", [["runoff EC", "uS/cm", 3000], ["input EC", "mS/cm", 1.5]], '=RUNOFF.SALTRATIO(RUNOFF.READING(A2,"uS/cm"),RUNOFF.READING(B2,"mS/cm"))', 2],
    ["ppm on its scale", "Salt ratio", [["runoff EC", "ppm 500", 1500], ["input EC", "ppm 700", 1050]], '=RUNOFF.SALTRATIO(RUNOFF.READING(A2,"ppm 500"),RUNOFF.READING(B2,"ppm 700"))', 2],
    ["S/m and mS/m", "Salt ratio", [["runoff EC", "S/m", 0.3], ["input EC", "mS/m", 150]], '=RUNOFF.SALTRATIO(RUNOFF.READING(A2,"S/m"),RUNOFF.READING(B2,"mS/m"))', 2],
    ["pH", "pH shift", [["runoff pH", "", 5.4], ["input pH", "", 5.9]], '=RUNOFF.PHSHIFT(RUNOFF.READING(A2,"pH"),RUNOFF.READING(B2,"pH"))', -0.5],
    ["gallons beside litres", "Leaching fraction", [["runoff volume", "L", 0.757_082_356_8], ["input volume", "gal", 1]], '=RUNOFF.LEACHFRACTION(IF(LEN(A2)=0,"",RUNOFF.READING(A2,"L")),IF(LEN(B2)=0,"",RUNOFF.READING(B2,"gal")))', 0.2],
    ["millilitres and fluid ounces", "Leaching fraction", [["runoff volume", "mL", 295.735_295_625], ["input volume", "fl oz", 50]], '=RUNOFF.LEACHFRACTION(IF(LEN(A2)=0,"",RUNOFF.READING(A2,"mL")),IF(LEN(B2)=0,"",RUNOFF.READING(B2,"fl oz")))', 0.2],
  ] as const)("%s: %s", async (_, header, row, formula, expected) => {
    expect(formulaIn(header, row)).toBe(formula);
    expect(await answer(header, row)).toBeCloseTo(expected, 9);
  });

  test("77 F and 60 % are 25 C and 60 %: 1.267 kPa ([fao-56] table 2.3: 3.168 kPa at 25 C, times 0.4)", async () => {
    const row = [["air temperature", "F", 77], ["humidity", "%", 60]] as const;
    expect(formulaIn("VPD (kPa)", row)).toBe('=RUNOFF.VPD(RUNOFF.READING(A2,"F"),RUNOFF.READING(B2,"%"))');
    expect(await answer("VPD (kPa)", row)).toBeCloseTo(3.168 * 0.4, 3);
  });

  test("1.305 mS/cm at 69.8 F without compensation is 1.413 at 25 C (0.01 M KCl at 21 C, EPA 120.1)", async () => {
    const row = [["runoff EC", "mS/cm", 1.305], ["solution temperature", "F", 69.8]] as const;
    const read = await answer("Runoff EC at 25 C (mS/cm)", row, { ...plain, uncompensated: true });
    expect(read).toBeCloseTo(1.413, 2);
  });

  test("flags of a row without compensation, 1305 uS/cm at 21 C over a limit of 1.4: high at 25 C, in band as read", async () => {
    const row = [["runoff EC", "uS/cm", 1305], ["solution temperature", "C", 21]] as const;
    const band = "{5.5,6.5,0.5,1.4}";
    expect(await answer("Row flags", row, { band, uncompensated: false })).toBe("in band");
    expect(await answer("Row flags", row, { band, uncompensated: true })).toBe("runoff EC high");
  });

  test.each([
    ["Salt ratio", [["runoff EC", "uS/cm", undefined], ["input EC", "mS/cm", 1.5]]],
    ["Salt ratio", [["runoff EC", "ppm 500", undefined], ["input EC", "mS/cm", 1.5]]],
    ["Leaching fraction", [["runoff volume", "L", undefined], ["input volume", "L", 2]]],
    ["Leaching fraction", [["runoff volume", "mL", undefined], ["input volume", "gal", 2]]],
    ["VPD (kPa)", [["air temperature", "F", undefined], ["humidity", "%", 60]]],
    ["Row flags", [["runoff pH", "", undefined], ["runoff EC", "uS/cm", undefined]]],
  ] as const)("%s stays blank where a reading is blank, %j", async (header, row) => {
    expect(await answer(header, row)).toBe("");
  });

  test("a logged 0 L is a reading: nothing drained of 2 L is a fraction of 0, and all that was poured was taken up", async () => {
    const row = [["runoff volume", "L", 0], ["input volume", "L", 2]] as const;
    expect(await answer("Leaching fraction", row)).toBe(0);
    expect(await answer("Taken up per watering (L)", row)).toBe(2);
  });

  test("flags take the medium by name, or the grower's own four limits", async () => {
    const row = [["runoff pH", "", 6], ["runoff EC", "mS/cm", 3.2]] as const;
    expect(formulaIn("Row flags", row)).toBe('=RUNOFF.ROWFLAG("","",RUNOFF.READING(A2,"pH"),RUNOFF.READING(B2,"mS/cm"),"coir, medium")');
    expect(await answer("Row flags", row)).toBe("in band");
    const own = bandText(ownBand(ph(5.6), ph(6.4), ec25(1.5), ec25(3)));
    expect(own).toBe("{5.6,6.4,1.5,3}");
    expect(await answer("Row flags", row, { ...plain, band: own })).toBe("runoff EC high");
    expect(bandText(ownBand(ph(5.6), ph(6.4), ec25(1.5), ec25(3), { medium: "coir", feeder: "heavy" }))).toBe(own);
    expect(bandText(bandFor("mineral wool", "light"))).toBe('"mineral wool, light"');
  });
});

describe("what a log lacks for a column", () => {
  const cells = logCells(columnsOf([["runoff EC", "mS/cm", 3], ["input EC", "mS/cm", 1]]), String);
  test.each([
    ["Salt ratio", plain, undefined],
    ["Salt ratio", { ...plain, uncompensated: true }, "needs a column of solution temperature"],
    ["pH shift", plain, "needs a column of runoff pH and input pH"],
    ["Row flags", { ...plain, band: undefined }, "choose the medium first"],
    ["Row flags", plain, undefined],
  ])("%s: %j", (header, options, missing) => {
    expect(whatIsMissing(columnCalled(header), cells, options)).toBe(missing);
  });

  test("a column that waits for its unit counts as not there", () => {
    const waiting = columnsOf([["runoff EC", "mS/cm", 3]]).map((column) => ({ ...column, read: false }));
    expect(logCells(waiting, String).size).toBe(0);
  });
});

describe("a Table's column in its own row", () => {
  const odd = ["EC [mS]", "EC #1", "grower's EC", "EC\nout", "=EC", "pH @ pot", "EC 'x' [a]#", 'EC "deep"'];

  test("brackets, # , ' and @ get an apostrophe in front; line breaks, quotes and = stay", () => {
    expect(odd.map((name) => inThisRow("Log", name))).toEqual([
      "Log[@[EC '[mS']]]", "Log[@[EC '#1]]", "Log[@[grower''s EC]]", "Log[@[EC\nout]]", "Log[@[=EC]]", "Log[@[pH '@ pot]]",
      "Log[@[EC ''x'' '[a']'#]]", 'Log[@[EC "deep"]]',
    ]);
  });

  test.each(odd)("3 over 1.5 in the column %j is a ratio of 2", async (name) => {
    const cells = logCells(columnsOf([["runoff EC", "uS/cm", 0], ["input EC", "mS/cm", 0]]), (column) => inThisRow("Log", [name, "In"][column] ?? ""));
    const formula = formulaFor(columnCalled("Salt ratio"), cells, plain);
    const table = { name: "Log", ref: "A1:C2", columns: [name, "In", "Salt ratio"] };
    const book = bookOf({ Log: { A1: { value: name }, B1: "In", C1: "Salt ratio", A2: 3000, B2: 1.5, C2: formula } }, { tables: { Log: [table] } });
    const [sheet] = await computeBook(book, host, metadata);
    expect(sheet?.values.get("C2")).toBe(2);
  });
});

describe("the log reader over our own columns", () => {
  test("takes none of them for a reading and asks nothing about them", () => {
    const ours = computedColumns.map(({ header }) => header);
    const { columns, questions } = readLog({ cells: [["Date", "Runoff EC (mS/cm)", ...ours], [46_000, 2.1, ...ours.map(() => 1)], [46_001, 2.2, ...ours.map(() => 1)]] });
    expect(columns.slice(2).map(({ quantity }) => quantity)).toEqual(ours.map(() => "other"));
    expect(questions).toEqual([]);
  });

  test("takes EC at 25 C for the EC", () => {
    const { columns } = readLog({ cells: [["Date", ...Object.values(compensatedColumns).map(({ header }) => header)], [46_000, 1.4, 2.1]] });
    expect(columns.slice(1)).toMatchObject([{ quantity: "input EC", unit: "mS/cm" }, { quantity: "runoff EC", unit: "mS/cm" }]);
  });
});

test("every function that a column calls is one of the add-in's", () => {
  const formulas = computedColumns.map((column) => formulaFor(column, new Map(), plain));
  const called = formulas.flatMap((formula) => [...formula.matchAll(/RUNOFF\.(\w+)/g)].map(([, id]) => id));
  expect(metadata.functions.map(({ id }) => id)).toEqual(expect.arrayContaining(called));
});

describe("balances of one watering", () => {
  const row = [["input EC", "mS/cm", 2], ["input volume", "gal", 1], ["runoff EC", "mS/cm", 3], ["runoff volume", "L", 0.785_411_784]] as const;

  test("1 gal poured and 0.785 L drained: 3 L taken up", async () => {
    expect(await answer("Taken up per watering (L)", row)).toBeCloseTo(3, 9);
  });

  test("2 mS/cm in 3.785 L less 3 in 0.785 L, at 640 mg/L per mS/cm: 3.337 g kept", async () => {
    expect(await answer("Salt kept (g)", row)).toBeCloseTo((2 * 3.785_411_784 - 3 * 0.785_411_784) * 0.64, 9);
  });
});
