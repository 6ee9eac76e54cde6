import type { HostErrorCode } from "./host-error";
import { newest } from "./levels";

/** One sync of the add-in, as it is about to be carried out. */
export interface Sync {
  /** Counted from 0 since the workbook was opened. */
  readonly number: number;
  /** How many of its actions change the workbook. */
  readonly writes: number;
}

/** How one sync fails: before anything of it is carried out, after all of it, or in place of one of its writes, counted from 0. */
export type Fault =
  | { readonly at: "before" | "after"; readonly code?: HostErrorCode }
  | { readonly at: "write"; readonly write: number };

/** About what 5 MB, the limit of the host on the web, hold at ten characters a cell. */
const cellsInFiveMegabytes = 500_000;

/** Failures a person or a test can switch on, to see how the pane takes them: none. */
export const noFailure = {
  /** Somebody is typing into a cell: the host refuses until they are done. */
  cellEditing: false,
  /** Sets the host does not have, as `ExcelApi 1.12`; newer ones are missing with it. */
  missingApi: undefined as string | undefined,
  /** The edition of the host: its sets. */
  level: newest,
  /** Milliseconds that each sync takes. */
  syncDelay: 0,
  /** Milliseconds for which the add-in's formulas show #BUSY! before they answer. */
  answersLate: 0,
  /** The most cells one sync may hand over. */
  cellsPerSync: cellsInFiveMegabytes,
  /** Called before each sync: what it does to the store is a person's edit between two syncs; the fault it answers befalls the sync. */
  onSync: undefined as ((sync: Sync) => Fault | undefined) | undefined,
};

export type HostSwitches = typeof noFailure;

/** Whether a requirement set is there: `ExcelApi`, `1.9`. Versions compare as numbers of two parts: 1.10 is above 1.9. */
export function hasSet({ missingApi, level }: Readonly<HostSwitches>, name: string, version = "1.1"): boolean {
  const [missingName, missingVersion = "1.1"] = missingApi?.split(" ") ?? [];
  if (name === missingName && order(version) >= order(missingVersion)) return false;
  const highest = level[name];
  return highest !== undefined && order(version) <= order(highest);
}

function order(version: string): number {
  const [major = "0", minor = "0"] = version.split(".");
  return Number(major) * 1000 + Number(minor);
}
