import { bandFor, type LogGrid, readLog, reportOf } from "../../src/index";
import { drawTimeline } from "../../taskpane/drawing/timeline-drawing";
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
    const date = asText ? `${(day % 28) + 1}/${(Math.floor(day / 28) % 12) + 1}/${2015 + Math.floor(day / 336)}` : firstDay + day;
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

/** A year of a logger's readings, every five minutes; the runoff climbs slowly. */
function loggersYear(): LogGrid {
  const day = (row: number): number => firstDay + row / 288;
  const cells = Array.from({ length: 105_120 }, (_, row): unknown[] => [
    day(row), 1.8, 5.8, 2 + row / 60_000 + (row % 11) / 100, 6 + (row % 7) / 50, 22, 60, row % 288 === 0 ? 2 : "",
  ]);
  return { cells: [["Date", "Feed EC (mS/cm)", "Feed pH", "Runoff EC (mS/cm)", "Runoff pH", "Air temp °C", "RH %", "In (L)"], ...cells] };
}

const loggersYearDrawn: Bench = {
  name: "a logger's year of 105,120 rows x 8 columns read, judged and drawn",
  run() {
    const grid = loggersYear();
    const times = Array.from({ length: 5 }, () => {
      const start = performance.now();
      const { timeline, title } = reportOf({ grid, band: bandFor("coir") });
      drawTimeline(timeline, { width: 320, theme: "light", title });
      return performance.now() - start;
    });
    return { figure: times.sort((a, b) => a - b)[2] ?? Number.NaN, unit: "ms", aim: 1000, detail: "median of 5; the picture as text, not laid out in a page" };
  },
};

export const benches: readonly Bench[] = [...[false, true].map((asText): Bench => ({
  name: `a log of 50,000 rows x 12 columns read, ${asText ? "all text" : "numbers"}`,
  run() {
    const { milliseconds, used } = medianOf(longLog(asText));
    return { figure: milliseconds, unit: "ms", aim: 300, detail: `${used} rows used, median of 9` };
  },
})), loggersYearDrawn];
