import type { Area } from "../excel/area";
import { HostError } from "../excel/host-error";
import { fixed, type HostDocument, type Kinds, object } from "./kind";

/** @throws {HostError} `InvalidSelection` when no cells are selected, but say a picture */
function selection({ store }: HostDocument): readonly [Area, ...Area[]] {
  const [first, ...more] = store.selection();
  if (first === undefined) throw new HostError("InvalidSelection");
  return [first, ...more];
}

const day = 86_400_000;
const daysFrom1899 = (year: number, month: number, date: number): number =>
  (Date.UTC(year, month - 1, date) - Date.UTC(1899, 11, 30)) / day;
const daysBetweenDateSystems = 1462;

export const workbookKinds = {
  Workbook: {
    properties: { name: fixed("workbench.xlsx") },
    parts: {
      worksheets: () => object("WorksheetCollection", true),
      names: () => object("NamedItemCollection", true),
      settings: (_, { records }) => object("SettingCollection", records.settings),
      tables: () => object("TableCollection", {}),
      functions: () => object("Functions", true),
      application: () => object("Application", true),
      _Runtime: () => object("Runtime", true),
    },
    finds: {
      getSelectedRange: (_, document) => {
        const [area, ...more] = selection(document);
        if (more.length > 0) throw new HostError("InvalidSelection");
        return object("Range", area);
      },
      getSelectedRanges: (_, document) => object("RangeAreas", selection(document)),
    },
  },
  Application: { acts: { calculate: () => undefined } },
  /** The add-in's own runtime: whether it wants to be told of events. */
  Runtime: {
    properties: {
      enableEvents: {
        get: (_, { records }) => records.eventsEnabled,
        set: (_, enabled, { records }) => { records.eventsEnabled = enabled === true; },
      },
    },
  },
  /** The host's own worksheet functions: only the one that tells which date system the workbook has. */
  Functions: {
    finds: {
      date: (_, { records }, year, month, date) =>
        object("FunctionResult", daysFrom1899(Number(year), Number(month), Number(date)) - (records.date1904 ? daysBetweenDateSystems : 0)),
    },
  },
  FunctionResult: { properties: { value: { get: (value) => value }, error: fixed("") } },
} satisfies Partial<Kinds>;
