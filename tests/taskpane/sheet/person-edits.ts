import { SheetProblem } from "../../../taskpane/workbook";
import { areaAt } from "../../../workbench/host/excel/area";
import { renameColumns } from "../../../workbench/host/excel/table-headers";
import { type Bench, trials, workbook } from "./forced-failures";

// What a person does to the workbook while an action waits for the host: before each of its syncs, each of these once.

interface Edit {
  readonly name: string;
  readonly make: (host: Bench) => void;
  /** Where a word was typed, which has to stand there afterwards. */
  readonly typed?: readonly [row: number, column: number];
}

const word = "my own note";

const typing = (name: string, row: number, column: number): Edit => ({
  name, typed: [row, column], make: ({ store, records, sheetId }) => {
    const cell = areaAt(sheetId, row, column);
    store.write(cell, [[word]]);
    renameColumns({ store, records }, cell);
  },
});

const edits: readonly Edit[] = [
  typing("types a reading anew", 1, 1),
  typing("types beside the log", 2, 7),
  typing("types a head beside the log", 0, 8),
  typing("types under the log", 5, 1),
  { name: "renames the sheet", make: ({ store, sheetId }) => { store.renameSheet(sheetId, "Bench 2"); } },
  { name: "protects the sheet", make: ({ records, sheetId }) => { records.sheet(sheetId).protected = true; } },
  { name: "deletes the sheet", make: ({ store, sheetId }) => { if (store.sheets().length > 1) store.deleteSheet(sheetId); } },
];

export interface EditTrial {
  readonly trial: string;
  readonly edit: string;
  readonly sync: number;
  readonly outcome: "as before" | "done" | "told" | "untold" | "lost" | "crash";
  readonly words: string;
}

/** Every edit before every sync of an action, or only before those that write. */
export async function editsOf(name: string, onlyWriting: boolean): Promise<EditTrial[]> {
  const tried: EditTrial[] = [];
  for (const [sync, writes] of (await writesOf(name)).entries()) {
    if (onlyWriting && writes === 0) continue;
    for (const edit of edits) tried.push(await tryEdit(name, edit, sync));
  }
  return tried;
}

async function prepared(name: string): Promise<{ readonly host: Bench; readonly act: () => Promise<unknown> }> {
  const trial = trials[name];
  if (trial === undefined) throw new Error(`there is no trial ${name}`);
  const { host, zone } = await trial.prepare();
  host.store.addSheet("Beside");
  return { host, act: () => trial.act(zone) };
}

/** How much each sync of an action writes. */
async function writesOf(name: string): Promise<number[]> {
  const { host, act } = await prepared(name);
  const found: number[] = [];
  host.switches.onSync = ({ writes }) => {
    found.push(writes);
    return undefined;
  };
  await act();
  return found;
}

async function tryEdit(name: string, edit: Edit, sync: number): Promise<EditTrial> {
  const { host, act } = await prepared(name);
  let at = -1;
  let justEdited = "";
  host.switches.onSync = () => {
    at += 1;
    if (at !== sync) return undefined;
    edit.make(host);
    justEdited = workbook(host);
    return undefined;
  };
  let problem: unknown;
  try {
    await act();
  } catch (caught) {
    problem = caught;
  }
  host.switches.onSync = undefined;
  const words = problem instanceof Error ? problem.message : "";
  return { trial: name, edit: edit.name, sync, outcome: outcomeOf(host, { edit, justEdited, problem }), words };
}

function outcomeOf(
  host: Bench, { edit, justEdited, problem }: { readonly edit: Edit; readonly justEdited: string; readonly problem: unknown },
): EditTrial["outcome"] {
  if (edit.typed !== undefined && !stands(host, edit.typed)) return "lost";
  if (problem === undefined) return "done";
  if (!(problem instanceof SheetProblem)) return "crash";
  if (problem.takeBack !== undefined) return "told";
  return workbook(host) === justEdited ? "as before" : "untold";
}

/** The word stands where it was typed. */
const stands = ({ store, sheetId }: Bench, [row, column]: readonly [number, number]): boolean =>
  store.formulas(areaAt(sheetId, row, column))[0]?.[0] === word;
