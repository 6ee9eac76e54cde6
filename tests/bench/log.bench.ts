import { type LogGrid, readLog } from "../../src/index";
import { type Bench } from "./measure";

const rows = 50_000;
const firstDay = 36_526;
const header = [
  "Date", "Time", "Pot", "EC in (mS/cm)", "pH in", "Runoff EC (mS/cm)", "Runoff pH", "Water (mL)", "Runoff (mL)", "Air temp °C", "RH %", "Notes",
];
const notes = ["", "", "", "flushed with 6 L", "no flush yet", "leaves fine", "changed feed to 1.2"];

/** Two readings a day of ten pots for years: as numbers, or, as a CSV file holds it, all text with day-first dates. */
function longLog(asText: boolean): LogGrid {
  const cells = Array.from({ length: rows }, (_, row): unknown[] => {
    const day = Math.floor(row / 20);
    const date = asText ? `${(day % 28) + 1}/${(Math.floor(day / 28) % 12) + 1}/${2000 + Math.floor(day / 336)}` : firstDay + day;
    const reading = (low: number, step: number, size: number): unknown => (asText ? String(low + (row % size) * step) : low + (row % size) * step);
    return [
      date, asText ? (row % 20 < 10 ? "8:30" : "17:45") : row % 20 < 10 ? 0.354 : 0.74, `Pot ${(row % 10) + 1}`, reading(1.4, 0.01, 40), reading(5.6, 0.01, 50),
      reading(1.8, 0.01, 150), reading(5.7, 0.01, 90), reading(500, 1, 100), reading(60, 1, 120), reading(18, 0.1, 90), reading(45, 1, 30), notes[row % notes.length],
    ];
  });
  return { cells: [header, ...cells] };
}

function medianOf(grid: LogGrid): { readonly milliseconds: number; readonly used: number } {
  const times: number[] = [];
  let used = 0;
  for (let round = 0; round < 9; round++) {
    const start = performance.now();
    used = readLog(grid).rows.length;
    times.push(performance.now() - start);
  }
  return { milliseconds: times.sort((a, b) => a - b)[4] ?? Number.NaN, used };
}

export const benches: readonly Bench[] = [false, true].map((asText) => ({
  name: `a log of 50,000 rows x 12 columns read, ${asText ? "all text" : "numbers"}`,
  run() {
    const { milliseconds, used } = medianOf(longLog(asText));
    return { figure: milliseconds, unit: "ms", aim: 500, detail: `${used} rows used, median of 9` };
  },
}));
