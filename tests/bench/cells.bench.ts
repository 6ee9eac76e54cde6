import { loadBundle } from "../../workbench/host/load-bundle";
import { type Bench, leastMilliseconds } from "./measure";

const rows = 100_000;
/** Times a bare loop that a function may take without a reason: each reading is looked at, and each answer. */
const aim = 3;

/** A column of different readings from `least` on, or one word for all of them. */
type Given = readonly [least: number, most: number] | string;

interface PlainFunction {
  readonly id: string;
  readonly given: readonly Given[];
  /** What a programmer would write by hand, without one check. */
  readonly bare: (...cells: number[]) => number;
  /** How far the hand-written one may be off, as a share of the answer: tables and constants rounded. */
  readonly within?: number;
  /** Why it may take longer than the aim. */
  readonly reason?: string;
}

const saturated = (celsius: number): number => 0.6108 * Math.exp((17.27 * celsius) / (celsius + 237.3));
const dewGamma = (celsius: number, humidity: number): number => Math.log(humidity / 100) + (17.27 * celsius) / (237.3 + celsius);

const plainFunctions: readonly PlainFunction[] = [
  { id: "READING", given: [[1, 3], "mS/cm"], bare: (ec) => ec, reason: "the bare loop copies, and reads no cell as the log reader does" },
  { id: "ECAT25", given: [[1, 3], [15, 30]], bare: (ec, celsius) => ec / (1 + 0.0191 * (celsius - 25)) },
  { id: "ECATTEMP", given: [[1, 3], [15, 30]], bare: (ec, celsius) => ec * (1 + 0.0191 * (celsius - 25)) },
  { id: "ECUNIT", given: [[1000, 3000], "uS/cm", "mS/cm"], bare: (ec) => ec / 1000 },
  { id: "ALKUNIT", given: [[50, 250], "mg/L CaCO3", "meq/L"], bare: (alkalinity) => (alkalinity * 2) / 100.087, within: 1e-4 },
  { id: "PPM", given: [[1, 3], [640, 640]], bare: (ec, scale) => ec * scale },
  { id: "ECFROMPPM", given: [[500, 2000], [640, 640]], bare: (ppm, scale) => ppm / scale },
  { id: "PPMRESCALE", given: [[500, 2000], [500, 500], [700, 700]], bare: (ppm, from, to) => (ppm / from) * to },
  { id: "PHSHIFT", given: [[5, 6], [5.5, 6.5]], bare: (runoff, input) => runoff - input },
  { id: "LEACHFRACTION", given: [[0.2, 0.6], [1, 3]], bare: (drained, poured) => drained / poured },
  { id: "LEACHNEED", given: [[0.5, 1], [2, 4]], bare: (water, soil) => water / (5 * soil - water) },
  { id: "DILUTION", given: [[5, 10], [3, 4], [1.6, 2], [0.2, 0.4]], bare: (litres, ec, target, water) => (litres * (ec - target)) / (target - water) },
  { id: "SWAPOUT", given: [[5, 10], [3, 4], [1.6, 2], [0.2, 0.4]], bare: (litres, ec, target, water) => (litres * (ec - target)) / (ec - water) },
  { id: "STOCKDOSE", given: [[10, 20], [1.4, 1.8], [0.2, 0.4], [0.2, 0.3]], bare: (litres, target, water, rise) => (litres * (target - water)) / rise },
  { id: "UPTAKE", given: [[2, 3], [0.2, 0.5], [24, 48]], bare: (poured, drained, hours) => ((poured - drained) * 24) / hours },
  { id: "WATERING", given: [[1, 2], [0.1, 0.3], [1, 3]], bare: (uptake, fraction, times) => uptake / (1 - fraction) / times },
  { id: "LABELPPM", given: [[1, 2], [10, 20], "N"], bare: (grams, percent) => grams * percent * 10 },
  { id: "DEWPOINT", given: [[18, 28], [40, 70]], bare: (t, rh) => (237.3 * dewGamma(t, rh)) / (17.27 - dewGamma(t, rh)), within: 1e-3 },
  { id: "VPD", given: [[24, 28], [40, 70]], bare: (air, humidity) => saturated(air) * (1 - humidity / 100), within: 1e-3 },
  { id: "DLI", given: [[300, 500], [10, 14]], bare: (light, hours) => (light * hours * 3600) / 1e6 },
  { id: "PHBUFFER", given: ["10.01", [20, 25]], bare: (celsius) => 10.062 - (0.052 * (celsius - 20)) / 5, within: 1e-3 },
  { id: "CALDUE", given: [[45_000, 45_009], [14, 28], [45_010, 45_020]], bare: (last, every, today) => Math.floor(last) + every - Math.floor(today) },
  { id: "RATIOCEILING", given: [[0.1, 0.5]], bare: (fraction) => 1 / fraction },
  { id: "SALTKEPT", given: [[1, 3], [2, 4], [2, 4], [0.2, 0.5]], bare: (inEc, litres, outEc, drained) => 0.64 * (inEc * litres - outEc * drained) },
  {
    id: "FLUSHVOLUME", given: [[5, 10], [4, 6], [2, 3], [0.2, 0.4], "coir"],
    bare: (pot, now, target, water) => (pot * Math.log((now - water) / (target - water))) / 1.0769, within: 1e-3,
  },
  { id: "BLENDSHARE", given: [[2, 3], [0.2, 0.4], [1, 1.5]], bare: (a, b, target) => (target - b) / (a - b) },
  { id: "FEEDGRAMS", given: [[10, 20], [100, 200], [10, 20], "N"], bare: (litres, ppm, percent) => (litres * ppm) / (10 * percent) },
  { id: "RECOVERYFEED", given: [[2, 2.4], [0.2, 0.4], [0, 6]], bare: (full, water, day) => water + (full - water) * (0.5 + day / 14) },
  { id: "LIGHTHOURS", given: [[300, 500], [10, 14]], bare: (light, dli) => (dli * 1e6) / 3600 / light },
];

const column = ([least, most]: readonly [number, number], nth: number): number[][] =>
  Array.from({ length: rows }, (_, row) => [least + ((most - least) * ((row * (nth + 3)) % 37)) / 37]);

function bareLoop(bare: PlainFunction["bare"], columns: readonly (readonly (readonly number[])[])[]): number[][] {
  const answers = new Array<number[]>(rows);
  for (let row = 0; row < rows; row++) {
    const [a, b, c, d] = columns;
    answers[row] = [bare(a?.[row]?.[0] ?? NaN, b?.[row]?.[0] ?? NaN, c?.[row]?.[0] ?? NaN, d?.[row]?.[0] ?? NaN)];
  }
  return answers;
}

export const benches: readonly Bench[] = plainFunctions.map(({ id, given, bare, within = 1e-9, reason }) => ({
  name: `one spilled ${id} over 100,000 rows against a bare loop`,
  run() {
    const worksheetFunction = loadBundle().host.associatedFunction(id);
    const cells = given.map((each, nth): unknown[][] => (typeof each === "string" ? [[each]] : column(each, nth)));
    const numbers = given.flatMap((each, nth) => (typeof each === "string" ? [] : [column(each, nth)]));
    const missing = new Array<null>(Math.max(0, worksheetFunction.length - cells.length)).fill(null);
    const call = (): unknown => worksheetFunction(...cells, ...missing);
    const answers = call() as number[][];
    bareLoop(bare, numbers).forEach(([expected = NaN], row) => {
      const answer = Number(answers[row]?.[0]);
      if (!(Math.abs(answer - expected) <= within * Math.abs(expected) + 1e-9)) throw new Error(`${id} answers ${answer}, the bare loop ${expected}`);
    });
    const [loop, ours] = leastMilliseconds(() => bareLoop(bare, numbers), call, 61);
    return { figure: ours / loop, unit: "times the bare loop", aim, detail: `${ours.toFixed(1)} ms against ${loop.toFixed(1)} ms, least of 61${reason === undefined ? "" : `; ${reason}`}` };
  },
}));
