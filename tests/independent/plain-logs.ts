import path from "node:path";
import fc from "fast-check";
import { type LogQuantity, type LogUnit, readLog } from "../../src/index";
import { readBook } from "../../workbench/files/read-book";
import { type CellValue } from "../../workbench/host/functions-host";
import { logGrid } from "../../workbench/timeline/log-grid";

/** The readings of a log as they stand in its cells, a quantity a column. */
export interface PlainLog {
  readonly name: string;
  readonly columns: readonly (readonly [LogQuantity, LogUnit])[];
  readonly rows: readonly (readonly CellValue[])[];
}

const samples = [
  "salt-buildup.csv", "salt-buildup.xlsx", "healthy-bench.xlsx", "ph-lockout.xlsx", "many-vessels-messy.xlsx",
];
const folder = path.resolve(import.meta.dirname, "../../sample-workbooks");

/** The log of every sample workbook; what a sheet leaves open is answered as a person would. */
export const sampleLogs = (): Promise<PlainLog[]> =>
  Promise.all(samples.map(async (name): Promise<PlainLog> => {
    const { grid } = logGrid(await readBook(path.join(folder, name)), undefined, undefined);
    const { columns, rows } = readLog(grid, { ppmScale: 500, ecUnit: "mS/cm", volumeUnit: "L", temperatureUnit: "C" });
    const measured = columns.filter(({ read, unit, quantity }) => read && unit !== undefined && quantity in figures);
    return {
      name,
      columns: measured.map(({ quantity, unit = "" }) => [quantity, unit]),
      rows: rows.map(({ row }) => measured.map(({ column }) => grid.cells[row]?.[column] as CellValue)),
    };
  }));

interface Figure {
  /** The units it may be logged in, with how much of each makes the first one (F apart). */
  readonly units: readonly (readonly [LogUnit, number])[];
  readonly usual: readonly [low: number, high: number];
  /** Figures at and beyond the ends of what is read, in the first unit. */
  readonly odd: readonly number[];
}

const ec: Figure = {
  units: [
    ["mS/cm", 1], ["uS/cm", 1000], ["dS/m", 1], ["mS/m", 100], ["S/m", 0.1], ["CF", 10], ["ppm 500", 500], ["ppm 640", 640],
    ["ppm 700", 700],
  ],
  usual: [0.3, 6], odd: [0.05, 0.1, 0.49, 0.5, 12, 20, 20.5, 60, 199, 201, -1],
};
const acidity: Figure = { units: [["", 1]], usual: [4.5, 7.5], odd: [0.4, 1, 1.2, 2.9, 3, 10, 10.1, 14, 14.5, -1] };
const volume: Figure = {
  units: [["L", 1], ["mL", 1000], ["gal", 1 / 3.785411784], ["qt", 4 / 3.785411784], ["fl oz", 128 / 3.785411784]],
  usual: [0.1, 3], odd: [2500, 1_100_000, -0.5],
};
const warmth: Figure = { units: [["C", 1], ["F", 1.8]], usual: [12, 34], odd: [-3, 4, 5, 45, 46, 80] };
const damp: Figure = { units: [["%", 1], ["share", 0.01]], usual: [30, 95], odd: [0.6, 1, 10, 100, 104, -5] };

/** What each column of a log may hold. */
const figures: Partial<Record<LogQuantity, Figure>> = {
  "input EC": ec, "runoff EC": ec, "input pH": acidity, "runoff pH": acidity,
  "input volume": volume, "runoff volume": volume, "solution temperature": warmth, "air temperature": warmth, humidity: damp,
};

/** Three decimals in the unit of the column, as a person types them. */
const typed = (value: number, [unit, factor]: readonly [LogUnit, number]): number =>
  Number((unit === "F" ? value * factor + 32 : value * factor).toFixed(3));

function cellOf({ usual: [low, high], odd }: Figure, unit: readonly [LogUnit, number]): fc.Arbitrary<CellValue> {
  const usual = fc.integer({ min: low * 100, max: high * 100 }).map((hundredths) => typed(hundredths / 100, unit));
  return fc.oneof(
    { weight: 30, arbitrary: usual },
    { weight: 5, arbitrary: fc.constantFrom(...odd).map((value) => typed(value, unit)) },
    { weight: 3, arbitrary: fc.constant(undefined) },
    { weight: 2, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.constantFrom<CellValue>("n/a", "1.8 mS", { error: "#N/A" }, { error: "#DIV/0!" }) },
  );
}

const rowsPerLog = 40;

/** Logs in all units, with blanks, zeros, words, errors and figures that no meter shows. */
export const randomLogs = (count: number, seed: number): PlainLog[] => {
  const log = fc.tuple(...Object.entries(figures).map(([quantity, figure]) =>
    fc.constantFrom(...figure.units).chain((unit) => fc.record({
      quantity: fc.constant(quantity as LogQuantity), unit: fc.constant(unit[0]),
      cells: fc.array(cellOf(figure, unit), { minLength: rowsPerLog, maxLength: rowsPerLog }),
    }))));
  return fc.sample(log, { seed, numRuns: count }).map((columns, n): PlainLog => ({
    name: `random ${n + 1}`,
    columns: columns.map(({ quantity, unit }) => [quantity, unit]),
    rows: Array.from({ length: rowsPerLog }, (_, row) => columns.map(({ cells }) => cells[row])),
  }));
};
