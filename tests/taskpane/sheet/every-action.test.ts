import { describe, expect, test } from "vitest";
import { computedColumns } from "../../../taskpane/formulas/computed-columns";
import { type RootZone } from "../../../taskpane/root-zone";
import { addColumns } from "../../../taskpane/sheet/add-columns";
import { extendColumns } from "../../../taskpane/sheet/extend-columns";
import { functionsState, reenter } from "../../../taskpane/sheet/functions-alive";
import { markRows, removeMarks } from "../../../taskpane/sheet/mark-rows";
import { addSheet } from "../../../taskpane/sheet/new-sheet";
import { turnColumns } from "../../../taskpane/sheet/turn-columns";
import { keepValuesOnly } from "../../../taskpane/sheet/values-only";
import { flushSheet } from "../../../taskpane/templates/flush-sheet";
import { mixSheet } from "../../../taskpane/templates/mix-sheet";
import { bench, filledCells, refusal, zoneAt } from "./bench-log";

const options = { band: '"coir, medium"', uncompensated: false };
const flags = computedColumns.filter(({ header }) => header === "Row flags");
const ratio = computedColumns.filter(({ header }) => header === "Salt ratio");

type Action = (zone: RootZone) => Promise<unknown>;

/** Those that write beside, over or on the log's own sheet. */
const onTheLog: Readonly<Record<string, Action>> = {
  "adding columns": (zone) => addColumns(zone, ratio, options),
  "carrying columns on": extendColumns,
  "marking rows": markRows,
  "removing the marks": ({ selection }) => removeMarks(selection.sheetId),
  "turning columns": (zone) => turnColumns(zone, "plain"),
  "keeping values only": keepValuesOnly,
};

const everywhere: Readonly<Record<string, Action>> = {
  ...onTheLog,
  "entering formulas again": reenter,
  "looking at the functions": functionsState,
  "a new mix sheet": () => addSheet(mixSheet()),
  "a new flush sheet": () => addSheet(flushSheet()),
};

/** A log with a column of flags, marked. */
async function worked(): Promise<{ host: ReturnType<typeof bench>; zone: RootZone }> {
  const host = bench();
  await addColumns(await zoneAt(host), flags, options);
  const zone = await zoneAt(host);
  await markRows(zone);
  return { host, zone };
}

const all = ({ store, records }: ReturnType<typeof bench>): unknown =>
  [store.sheets().map(({ id, name }) => [name, filledCells(store, id)]), records.conditionalFormats.length];

describe.each(Object.entries(everywhere))("%s", (_, action) => {
  test("waits for nobody who is typing into a cell: it says how to go on, and changes nothing", async () => {
    const { host, zone } = await worked();
    const before = all(host);
    host.switches.cellEditing = true;
    expect(await refusal(() => action(zone))).toBe("A cell is being edited. Press Enter or Escape in the sheet, then try again.");
    host.switches.cellEditing = false;
    expect(all(host)).toEqual(before);
  });
});

describe.each(Object.entries(onTheLog))("%s", (_, action) => {
  test("on a protected sheet says how to unprotect it, and changes nothing", async () => {
    const { host, zone } = await worked();
    const before = all(host);
    host.records.sheet(host.sheetId).protected = true;
    expect(await refusal(() => action(zone))).toMatch(/protected.*[Uu]nprotect/);
    expect(all(host)).toEqual(before);
  });
});
