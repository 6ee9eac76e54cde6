import { type LogGrid } from "../../src/index";

/** A logger's file, made anew each time from its seed. */
export interface LoggerPlan {
  readonly start: string;
  readonly minutes: number;
  readonly count: number;
  readonly seed: number;
  readonly headers: readonly string[];
  readonly signals: readonly { readonly low: number; readonly high: number; readonly digits: number }[];
  /** Stretches of ten stamps that are missing. */
  readonly gaps: number;
  /** Rows sent twice. */
  readonly duplicates: number;
  /** Single figures multiplied by `spike`. */
  readonly spikes: number;
  readonly spike: number;
  /** Rows whose figures are the word `blank`. */
  readonly blanks?: number;
  readonly blank?: string;
  /** How the stamps are written: as text, as serials with a format, or day and clock apart. */
  readonly stamp: "text" | "serial" | "apart";
}

export interface LoggerFile {
  readonly grid: LogGrid;
  /** The true day of each row of the grid; `undefined` for the header. */
  readonly days: readonly (number | undefined)[];
  /** Rows of the grid that repeat the one above. */
  readonly repeats: ReadonlySet<number>;
  /** Cells of the grid, "row,column" counted from 0, that are spikes. */
  readonly spikes: ReadonlySet<string>;
}

/** Numbers from 0 to 1 by Park and Miller's generator (1988), with their later multiplier; from memory. */
function chance(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

const picks = (next: () => number, many: number, count: number): Set<number> =>
  new Set(Array.from({ length: many }, () => 1 + Math.floor(next() * (count - 2))));

const cut = (value: number, digits: number): number => Number(value.toFixed(digits));

interface Walk { readonly low: number; readonly high: number; readonly digits: number; at: number }

/** One step of at most a tenth of the signal's span, within its limits. */
function step(walk: Walk, next: () => number): number {
  const span = walk.high - walk.low;
  walk.at = Math.min(walk.high, Math.max(walk.low, walk.at + (next() - 0.5) * 0.2 * span));
  return cut(walk.at, walk.digits);
}

const twoDigits = (value: number): string => String(value).padStart(2, "0");

function stampCells(milliseconds: number, stamp: LoggerPlan["stamp"]): unknown[] {
  const at = new Date(milliseconds);
  const date = at.toISOString().slice(0, 10);
  const clock = `${twoDigits(at.getUTCHours())}:${twoDigits(at.getUTCMinutes())}:00`;
  if (stamp === "apart") return [date, clock];
  return [stamp === "text" ? `${date} ${clock}` : milliseconds / 86_400_000 + 25_569];
}

/** The file of a plan: rows in time, with the faults it asks for. */
export function loggerFile(plan: LoggerPlan): LoggerFile {
  const next = chance(plan.seed);
  const gaps = picks(next, plan.gaps, plan.count);
  const twice = picks(next, plan.duplicates, plan.count);
  const spiked = picks(next, plan.spikes, plan.count);
  const blanks = picks(next, plan.blanks ?? 0, plan.count);
  const walks: Walk[] = plan.signals.map((signal) => ({ ...signal, at: (signal.low + signal.high) / 2 }));
  const cells: unknown[][] = [[...plan.headers]];
  const days: (number | undefined)[] = [undefined];
  const repeats = new Set<number>();
  const spikes = new Set<string>();
  const first = Date.parse(`${plan.start}T00:00Z`);
  for (let at = 0; at < plan.count; at += 1) {
    const figures = walks.map((walk) => step(walk, next));
    if ([...gaps].some((gap) => at > gap && at <= gap + 10)) continue;
    const moment = first + at * plan.minutes * 60_000;
    const stamp = stampCells(moment, plan.stamp);
    if (spiked.has(at)) spikes.add(`${cells.length},${stamp.length}`);
    const said = figures.map((figure, place) => (spiked.has(at) && place === 0 ? cut(figure * plan.spike, 2) : figure));
    const row = [...stamp, ...(blanks.has(at) ? said.map(() => plan.blank) : said)];
    for (const copy of twice.has(at) && !blanks.has(at) ? [0, 1] : [0]) {
      if (copy === 1) repeats.add(cells.length);
      cells.push([...row]);
      days.push(moment / 86_400_000 + 25_569);
    }
  }
  return { grid: { cells, numberFormats: formats(cells, plan.stamp) }, days, repeats, spikes };
}

const formats = (cells: readonly (readonly unknown[])[], stamp: LoggerPlan["stamp"]): string[][] => {
  const header = cells[0]?.map(() => "General") ?? [];
  const body = header.map((format, column) => (stamp === "serial" && column === 0 ? "yyyy-mm-dd hh:mm" : format));
  return cells.map((_, row) => (row === 0 ? header : body));
};
