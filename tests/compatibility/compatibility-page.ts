/// <reference types="office-js" />
import { forPot, noChoices } from "../../taskpane/choices";
import { keepChoices } from "../../taskpane/kept-choices";
import { computedColumns } from "../../taskpane/formulas/computed-columns";
import { plantColumns } from "../../taskpane/formulas/plant-columns";
import { type RootZone, rootZoneOf } from "../../taskpane/root-zone";
import { addColumns, putColumns } from "../../taskpane/sheet/add-columns";
import { extendColumns } from "../../taskpane/sheet/extend-columns";
import { followSelection } from "../../taskpane/sheet/follow";
import { reenter } from "../../taskpane/sheet/functions-alive";
import { goTo } from "../../taskpane/sheet/go-to";
import { markRows, removeMarks } from "../../taskpane/sheet/mark-rows";
import { addSheet } from "../../taskpane/sheet/new-sheet";
import { placePicture } from "../../taskpane/sheet/place-picture";
import { readSelection } from "../../taskpane/sheet/read-selection";
import { selectedPlace } from "../../taskpane/sheet/selected-place";
import { turnColumns } from "../../taskpane/sheet/turn-columns";
import { keepValuesOnly } from "../../taskpane/sheet/values-only";
import { flushSheet } from "../../taskpane/templates/flush-sheet";
import { meterSheet } from "../../taskpane/templates/meter-sheet";
import { mixSheet } from "../../taskpane/templates/mix-sheet";
import { watchSheet } from "../../taskpane/templates/watch-sheet";
import { SheetProblem } from "../../taskpane/workbook";
import { clientOver } from "../../workbench/host/client/load-client";
import { areaAt } from "../../workbench/host/excel/area";
import { type Level, levels } from "../../workbench/host/excel/levels";
import { MemoryStore } from "../../workbench/host/excel/memory-store";
import { hasSet } from "../../workbench/host/excel/switches";
import { smallPng } from "../workbench/host/strict-host";

/** Three waterings, as a person types them; serial days from 1 March 2026. */
const log = [
  ["Date", "Feed EC (mS/cm)", "Feed pH", "Runoff EC (mS/cm)", "Runoff pH"],
  [46_082, 1.5, 5.9, 3, 5.4],
  [46_084, 1.6, 5.8, 3.2, 5.5],
  [46_086, 1.6, 5.8, 2.4, 6],
];

const options = { band: '"coir, medium"', uncompensated: false };
const called = (wanted: string): (typeof computedColumns)[number][] => computedColumns.filter(({ header }) => header === wanted);
const addFlags = (zone: RootZone): Promise<unknown> => addColumns(zone, called("Row flags"), options);

const picture = { png: smallPng, width: 640, height: 400, description: "a timeline" };

interface Action {
  readonly name: string;
  readonly run: (zone: RootZone) => Promise<unknown>;
  readonly isInTable?: boolean;
}

/** What the pane can do, in the order in which it offers it; each begins with the log read, in a workbook of its own. */
const actions: readonly Action[] = [
  { name: "Read the selection, judge it, draw it", run: () => Promise.resolve() },
  { name: "Follow the selection", run: () => followSelection(() => undefined) },
  { name: "Go to a cell", run: ({ selection }) => goTo(selection.sheetId, 1, 1) },
  { name: "Place the picture on the sheet", run: ({ selection }) => placePicture(selection.sheetId, picture) },
  { name: "Keep what was answered in the workbook", run: (zone) => keepChoices(zone.selection, noChoices) },
  { name: "Add columns beside a log", run: addFlags },
  { name: "Add columns in a Table", run: addFlags, isInTable: true },
  { name: "Add plant columns", run: (zone) => putColumns(zone, plantColumns(zone.reading)) },
  { name: "Carry columns on", run: async (zone) => { await addFlags(zone); await extendColumns(zone); } },
  { name: "Mark flagged rows, remove the marks", run: async (zone) => {
    await addFlags(zone);
    await markRows(zone);
    await removeMarks(zone.selection.sheetId);
  } },
  { name: "Enter stuck formulas again", run: reenter },
  { name: "Turn columns into the other kind", run: async (zone) => { await addFlags(zone); await turnColumns(zone, "plain"); } },
  { name: "Keep values only", run: async (zone) => { await addFlags(zone); await keepValuesOnly(); } },
  { name: "New mix sheet", run: () => addSheet(mixSheet()) },
  { name: "New flush sheet", run: () => addSheet(flushSheet()) },
  { name: "New watch sheet", run: () => addSheet(watchSheet()) },
  { name: "New meter sheet", run: () => addSheet(meterSheet()) },
];

/** A workbook with the log, seen through the library on one edition of the host. */
function openOn(level: Level, isInTable: boolean): MemoryStore {
  const store = new MemoryStore({ compute: () => [["in band"]] }, "Log");
  const area = areaAt(store.activeSheetId(), 0, 0, log.length, 5);
  store.write(area, log);
  store.select([areaAt(area.sheetId, 1, 1)]);
  const { records } = store;
  const columns = (log[0] ?? []).map(String);
  if (isInTable) records.tables.push({ id: "t", name: "Log1", area, columns, showTotals: false, style: "" });
  records.switches.level = level.sets;
  const { Excel: excel, Office: office } = clientOver(store);
  Object.assign(globalThis, { Excel: excel, Office: office });
  return store;
}

async function outcome({ run, isInTable = false }: Action, level: Level): Promise<string> {
  openOn(level, isInTable);
  try {
    const zone = rootZoneOf(await readSelection(await selectedPlace()), { ...noChoices, ...forPot(noChoices, undefined, { medium: "coir" }) });
    await run(zone);
    return "works";
  } catch (problem) {
    if (problem instanceof SheetProblem && problem.kind === "not offered") return "says that it is missing";
    return `FAILS: ${problem instanceof Error ? problem.message : String(problem)}`;
  }
}

const has = ({ sets }: Level, name: string, version: string): boolean =>
  hasSet({ ...new MemoryStore().records.switches, level: sets }, name, version);

function functionsOn(level: Level, least: string): string {
  if (!has(level, "ExcelApi", least)) return "not there";
  return has(level, "CustomFunctionsRuntime", "1.1") && has(level, "SharedRuntime", "1.1") ? "work" : "not there; the pane says so";
}

/** docs/compatibility.md: what was carried out on each edition, not what is hoped. `least` is what the manifest asks for. */
export async function compatibilityPage(least: string): Promise<string> {
  const row = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  const opens = levels.map((level) => (has(level, "ExcelApi", least) ? "opens" : "not offered"));
  const rows: string[][] = [["The pane", ...opens], ["The worksheet functions", ...levels.map((level) => functionsOn(level, least))]];
  for (const action of actions) {
    const cells: string[] = [];
    for (const level of levels) cells.push(has(level, "ExcelApi", least) ? await outcome(action, level) : "-");
    rows.push([action.name, ...cells]);
  }
  // The set that joins what one action writes: see `writingInExcel`.
  const oneStep = levels.map((level) => (has(level, "ExcelApi", "1.20") ? "one step" : "several; or the pane's Take back"));
  rows.push(["Ctrl+Z takes an action back in", ...oneStep.map((said, i) => (opens[i] === "opens" ? said : "-"))]);
  const versions = levels.map(({ sets }) => `ExcelApi ${sets["ExcelApi"] ?? "none"}`);
  return `# What works where

Before you install: what the pane can do on your Excel.

Back to the [README](../README.md).

Each action of the pane is carried out here on the host's own client library, which refuses what an edition lacks by its own list of
what came with which version. The manifest asks for ExcelApi ${least}: an Excel that has less does not offer the pane,
for only from there on does it tell of a selection of several areas, and a log is often selected so. What came later is asked for when it is used. Written by
\`npm run compatibility -- --write\`; a test holds it.

${row(["", ...levels.map(({ name }) => name)])}
${row(["---", ...levels.map(() => "---")])}
${row(["Its interface", ...versions])}
${rows.map(row).join("\n")}

Excel on phones runs no add-ins: a formula that calls the functions shows there what its cell held when the file was saved.
Computed columns written as plain formulas go on computing there, and for people without the add-in: choose the kind where
the columns are added; one button turns those that stand into the chosen kind, and back. "Keep values only" before sharing
keeps every other answer readable. Excel 2019's row is from memory; the others are the host's published tables.
`;
}

/** The version of ExcelApi that the manifest asks for, without which the pane is not offered. */
export function leastVersion(manifest: string): string {
  const found = /<Set Name="ExcelApi" MinVersion="([\d.]+)"/.exec(manifest)?.[1];
  if (found === undefined) throw new Error("the manifest asks for no version of ExcelApi");
  return found;
}
