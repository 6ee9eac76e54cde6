import { setTimeout as turn } from "node:timers/promises";
import { bandFor } from "../../../src/index";
import { computedColumns } from "../../../taskpane/formulas/computed-columns";
import { plantColumns } from "../../../taskpane/formulas/plant-columns";
import { sheetFor } from "../../../taskpane/made-sheets";
import { type SheetTool } from "../../../taskpane/next-thing";
import { type RootZone } from "../../../taskpane/root-zone";
import { addColumns, putColumns } from "../../../taskpane/sheet/add-columns";
import { type Done } from "../../../taskpane/sheet/done";
import { extendColumns } from "../../../taskpane/sheet/extend-columns";
import { reenter } from "../../../taskpane/sheet/functions-alive";
import { keep } from "../../../taskpane/sheet/keep";
import { markRows, removeMarks } from "../../../taskpane/sheet/mark-rows";
import { addSheet } from "../../../taskpane/sheet/new-sheet";
import { placePicture } from "../../../taskpane/sheet/place-picture";
import { turnColumns } from "../../../taskpane/sheet/turn-columns";
import { keepValuesOnly } from "../../../taskpane/sheet/values-only";
import { writeEntries } from "../../../taskpane/sheet/write-entries";
import { SheetProblem } from "../../../taskpane/workbook";
import { areaAt } from "../../../workbench/host/excel/area";
import { type Fault } from "../../../workbench/host/excel/switches";
import { smallPng } from "../../workbench/host/strict-host";
import { bench, benchLog, zoneAt } from "./bench-log";

// Every action of the pane on a sheet, and every taking back, with one of its syncs failing: before it, after it, or at one
// of its writes; once, or from then on for good.

export type Bench = ReturnType<typeof bench>;
type Action = (zone: RootZone) => Promise<Done | undefined>;

export interface Trial {
  readonly prepare: () => Promise<{ readonly host: Bench; readonly zone: RootZone }>;
  readonly act: Action;
}

const options = { band: '"coir, medium"', limits: bandFor("coir"), uncompensated: false };
const columns = (...headers: readonly string[]): typeof computedColumns => computedColumns.filter(({ header }) => headers.includes(header));

/** A log whose person gave a column on its right a width, a format and a bold head before anything stood there. */
function freshBench(cells = benchLog): Bench {
  const host = bench(cells);
  host.store.setSize(areaAt(host.sheetId, 0, 7), "column", 99);
  host.store.setNumberFormats(areaAt(host.sheetId, 2, 7), [["0.000"]]);
  host.store.setLook(areaAt(host.sheetId, 0, 7), { bold: true });
  return host;
}

const onLog = async (host: Bench): Promise<{ host: Bench; zone: RootZone }> => ({ host, zone: await zoneAt(host) });

async function withColumns(...headers: readonly string[]): Promise<{ host: Bench; zone: RootZone }> {
  const host = freshBench();
  await addColumns(await zoneAt(host), columns(...headers), options);
  return onLog(host);
}

async function withPlain(): Promise<{ host: Bench; zone: RootZone }> {
  const host = freshBench();
  await addColumns(await zoneAt(host), columns("Salt ratio", "Row flags"), { ...options, kind: "plain" });
  return onLog(host);
}

async function grown(): Promise<{ host: Bench; zone: RootZone }> {
  const { host } = await withColumns("Salt ratio", "pH shift");
  host.store.write(areaAt(host.sheetId, 4, 0, 1, 7), [[46_088, 1.6, 5.8, 2500, 6.1, 2, 0.5]]);
  return onLog(host);
}

async function marked(): Promise<{ host: Bench; zone: RootZone }> {
  const { host, zone } = await withColumns("Row flags");
  await markRows(zone);
  return onLog(host);
}

async function inTable(): Promise<{ host: Bench; zone: RootZone }> {
  const host = freshBench();
  await host.run(async (context) => {
    context.workbook.tables.add(context.workbook.worksheets.getActiveWorksheet().getRange("A1:G4"), true).name = "Waterings";
    await context.sync();
  });
  return onLog(host);
}

function stuck(): Promise<{ host: Bench; zone: RootZone }> {
  const host = freshBench();
  const other = host.store.addSheet("Second");
  host.store.write(areaAt(host.sheetId, 1, 8, 2, 1), [[{ formula: "=_xldudf_RUNOFF_PPM(B2,500)" }], [{ formula: "=_xldudf_RUNOFF_PPM(B3,500)" }]]);
  host.store.write(areaAt(other, 0, 0), [[{ formula: "=_xldudf_RUNOFF_PPM(Log!B2,500)" }]]);
  return onLog(host);
}

const picture = { png: smallPng, width: 640, height: 400, description: "a timeline" };
const place: Action = async ({ selection }) => {
  await placePicture(selection.sheetId, picture);
  return undefined;
};

const addPlant: Action = (zone) => putColumns(zone, plantColumns(zone.reading));

/** A sheet for a step of the course, made from the pot shown. */
const newSheet = (tool: SheetTool): Trial =>
  ({ prepare: () => onLog(freshBench()), act: (zone) => addSheet(sheetFor(tool, zone)) });

const actions: Readonly<Record<string, Trial>> = {
  "adding columns": { prepare: () => onLog(freshBench()), act: (zone) => addColumns(zone, columns("Salt ratio", "Row flags"), options) },
  "adding columns to a Table": { prepare: inTable, act: (zone) => addColumns(zone, columns("Salt ratio", "pH shift"), options) },
  "adding plant columns": { prepare: () => onLog(freshBench()), act: addPlant },
  "adding plant columns to a Table": { prepare: inTable, act: addPlant },
  "carrying columns on": { prepare: grown, act: extendColumns },
  "marking rows": { prepare: () => withColumns("Row flags"), act: markRows },
  "marking rows again": { prepare: marked, act: markRows },
  "removing the marks": { prepare: marked, act: ({ selection }) => removeMarks(selection.sheetId) },
  "turning columns into plain formulas": {
    prepare: () => withColumns("Salt ratio", "Row flags"), act: (zone) => turnColumns(zone, "plain"),
  },
  "turning columns into functions": { prepare: withPlain, act: (zone) => turnColumns(zone, "functions") },
  "keeping values only": { prepare: () => withColumns("Salt ratio", "pH shift"), act: keepValuesOnly },
  "entering formulas again": { prepare: stuck, act: reenter },
  "a new mix sheet": newSheet("mix sheet"),
  "a new flush sheet": newSheet("flush sheet"),
  "a new watch sheet": newSheet("watch sheet"),
  "a new meter sheet": newSheet("meter sheet"),
  "writing a portion's readings": {
    prepare: () => onLog(freshBench()),
    act: async ({ selection }) => {
      await writeEntries(selection.sheetId, [{ row: 5, column: 1, values: [1.2, 6] }, { row: 5, column: 5, values: [0.8] }]);
      return undefined;
    },
  },
  "placing the picture": { prepare: () => onLog(freshBench()), act: place },
  "keeping answers": {
    prepare: () => onLog(freshBench()),
    act: async ({ selection }) => {
      await keep(selection, "a log", { medium: "coir" });
      return undefined;
    },
  },
};

/** The taking back of an action is an action, too. */
const takingBack = ({ prepare, act }: Trial): Trial => {
  let done: Done | undefined;
  return {
    prepare: async () => {
      const prepared = await prepare();
      done = await act(prepared.zone);
      return prepared;
    },
    act: async () => {
      await done?.takeBack();
      return undefined;
    },
  };
};

const withoutWayBack = new Set(["placing the picture", "keeping answers", "writing a portion's readings"]);

export const trials: Readonly<Record<string, Trial>> = Object.fromEntries(
  Object.entries(actions).flatMap(([name, trial]) =>
    withoutWayBack.has(name) ? [[name, trial]] : [[name, trial], [`taking back: ${name}`, takingBack(trial)]]),
);

/** What a cell holds and looks like, where it is not as in a new workbook. */
function cellsOf(store: Bench["store"], id: string): string[] {
  const area = store.filledArea(id, false);
  if (area === undefined) return [];
  const [formulas, formats] = [store.formulas(area), store.numberFormats(area)];
  return formulas.flatMap((line, i) => line.flatMap((formula, j) => {
    const { bold = false, italic = false, fill = "", color = "" } = store.look(area.row + i, area.column + j, id);
    const said = [formula, formats[i]?.[j] ?? "General", bold, italic, fill, color].join(" ");
    return said === " General false false  " ? [] : [`${area.row + i},${area.column + j}: ${said}`];
  }));
}

const widthsOf = (store: Bench["store"], id: string): number[] => Array.from({ length: 20 }, (_, column) => store.box(areaAt(id, 0, column)).width);

/** All of a workbook that a person could see, without the ids that differ from one making to the next. */
export function workbook({ store, records }: Bench): string {
  const nameOf = new Map(store.sheets().map(({ id, name }) => [id, name]));
  const sheets = store.sheets().map(({ id, name }) => [name, cellsOf(store, id), widthsOf(store, id), [...records.sheet(id).custom]]);
  const lists = [records.tables, records.shapes, records.charts, records.conditionalFormats, records.validations, records.names];
  const plain = (key: string, value: unknown): unknown => (key === "id" ? undefined : key === "sheetId" ? nameOf.get(String(value)) : value);
  return JSON.stringify([sheets, lists, [...records.settings]], plain);
}

export type Outcome = "as before" | "done" | "told" | "untold";

export interface FailedTrial {
  readonly trial: string;
  readonly sync: number;
  readonly fault: Fault;
  readonly forGood: boolean;
  readonly outcome: Outcome;
  /** Whether, once the host works again, a second press (after a way back, where one was offered) reaches the goal. */
  readonly reached: boolean;
  readonly words: string;
}

/** The syncs of an action that goes well, with the number of their writes, and the workbook after it. */
async function wellDone({ prepare, act }: Trial): Promise<{ readonly writes: readonly number[]; readonly goal: string }> {
  const { host, zone } = await prepare();
  const writes: number[] = [];
  host.switches.onSync = (sync) => {
    writes.push(sync.writes);
    return undefined;
  };
  await act(zone);
  return { writes, goal: workbook(host) };
}

/** The ways in which one of an action's syncs can fail: at `mostWrites` of its writes at most, spread over them. */
export async function failuresOf(name: string, mostWrites = Infinity): Promise<FailedTrial[]> {
  const trial = trials[name];
  if (trial === undefined) throw new Error(`there is no trial ${name}`);
  const { writes, goal } = await wellDone(trial);
  const failed: FailedTrial[] = [];
  for (const [sync, count] of writes.entries()) {
    const faults: Fault[] = [{ at: "before" }, { at: "after" }, ...spread(count, mostWrites).map((write) => ({ at: "write", write } as const))];
    for (const fault of faults) for (const forGood of [false, true]) {
      failed.push(await failedTrial(name, { trial, goal, sync, fault, forGood }));
      await turn(1); // the library lets go of a workbook in a timer of its own; without its turn thousands pile up
    }
  }
  return failed;
}

/** The first, the last and others between. */
const spread = (count: number, most: number): number[] =>
  Array.from({ length: Math.min(count, most) }, (_, i) => (count <= most ? i : Math.round((i * (count - 1)) / (most - 1))));

interface Plan {
  readonly trial: Trial;
  readonly goal: string;
  readonly sync: number;
  readonly fault: Fault;
  readonly forGood: boolean;
}

async function failedTrial(name: string, { trial, goal, sync, fault, forGood }: Plan): Promise<FailedTrial> {
  const { host, zone } = await trial.prepare();
  const before = workbook(host);
  let at = -1;
  host.switches.onSync = () => {
    at += 1;
    if (at === sync) return fault;
    return forGood && at > sync ? { at: "before" } : undefined;
  };
  let problem: unknown;
  try {
    await trial.act(zone);
  } catch (caught) {
    problem = caught;
  }
  host.switches.onSync = undefined;
  const outcome = outcomeOf(workbook(host), { before, goal, problem });
  const words = problem instanceof Error ? problem.message : "";
  return { trial: name, sync, fault, forGood, outcome, reached: await reaches(trial, { host, zone, goal, problem }), words };
}

function outcomeOf(now: string, { before, goal, problem }: { readonly before: string; readonly goal: string; readonly problem: unknown }): Outcome {
  if (problem === undefined) return now === goal ? "done" : "untold";
  if (!(problem instanceof SheetProblem)) return "untold";
  if (problem.takeBack !== undefined) return "told";
  return now === before ? "as before" : "untold";
}

async function reaches(
  { act }: Trial, { host, zone, goal, problem }: { readonly host: Bench; readonly zone: RootZone; readonly goal: string; readonly problem: unknown },
): Promise<boolean> {
  if (problem === undefined) return workbook(host) === goal;
  try {
    if (problem instanceof SheetProblem) await problem.takeBack?.();
    await act(zone);
  } catch {
    return false;
  }
  return workbook(host) === goal;
}
