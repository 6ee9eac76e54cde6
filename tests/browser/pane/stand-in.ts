import { DocumentBridge } from "../../../workbench/host/client/bridge";
import { prepareAssociation } from "../../../workbench/host/client/function-calls";
import { greet, themes } from "../../../workbench/host/client/office";
import { areaAt } from "../../../workbench/host/excel/area";
import { MemoryStore } from "../../../workbench/host/excel/memory-store";
import type { Scalar } from "../../../workbench/host/excel/sheet-store";
import type { HostSwitches } from "../../../workbench/host/excel/switches";

/** What a test has on the sheet when the pane opens. */
export interface Scene {
  readonly cells: readonly (readonly Scalar[])[];
  /** Row, column, rows, columns of each selected area, counted from 0; none means that no cells are selected. */
  readonly selected?: readonly Place[];
  readonly table?: { readonly name: string; readonly place: Place };
  readonly hiddenRows?: readonly number[];
  /** Further sheets of the book, after the one called Log. */
  readonly others?: readonly { readonly name: string; readonly cells: readonly (readonly Scalar[])[] }[];
  readonly isProtected?: boolean;
  readonly isDark?: boolean;
  /** What the sheet keeps of its own. */
  readonly kept?: Readonly<Record<string, string>>;
  readonly switches?: Partial<HostSwitches>;
}

export type Place = readonly [row: number, column: number, rows: number, columns: number];

declare global {
  interface Window {
    scene?: Scene;
    sheet: {
      readonly store: MemoryStore;
      readonly id: string;
      select(places: readonly Place[]): void;
      type(row: number, column: number, value: Scalar): void;
      greet(): void;
    };
  }
}

function fill(store: MemoryStore, id: string, cells: Scene["cells"]): void {
  const width = Math.max(0, ...cells.map((row) => row.length));
  const filled = cells.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? ""));
  if (width > 0) store.write(areaAt(id, 0, 0, cells.length, width), filled);
}

/**
 * Stands around the host's own library: a workbook in memory, as a test has set it up, and the greeting after the
 * library.
 */
function raise({
  cells,
  selected = [[0, 0, 1, 1]],
  table,
  hiddenRows = [],
  others = [],
  isProtected,
  isDark,
  kept = {},
  switches,
}: Scene): void {
  const store = new MemoryStore({}, "Log");
  const id = store.activeSheetId();
  fill(store, id, cells);
  for (const other of others) fill(store, store.addSheet(other.name), other.cells);
  const select = (places: readonly Place[]): void => {
    store.select(places.map((place) => areaAt(id, ...place)));
  };
  select(selected);
  const { records } = store;
  if (table !== undefined) {
    const area = areaAt(id, ...table.place);
    const columns = (cells[area.row] ?? []).slice(area.column, area.column + area.columnCount).map(String);
    records.tables.push({ id: records.newId("table"), name: table.name, area, columns, showTotals: false, style: "" });
  }
  for (const row of hiddenRows) store.setHidden(areaAt(id, row, 0), "row", true);
  records.sheet(id).protected = isProtected === true;
  for (const [key, value] of Object.entries(kept)) records.sheet(id).custom.set(key, value);
  Object.assign(records.switches, switches);
  prepareAssociation(window);
  Object.assign(window, { _richApiNativeBridge: new DocumentBridge(store) });
  window.sheet = {
    store,
    id,
    select,
    type: (row, column, value) => {
      store.type(areaAt(id, row, column), value);
    },
    greet: () => {
      greet(window as object, store, () => themes[isDark === true ? "dark" : "light"]);
    },
  };
}

raise(window.scene ?? { cells: [] });
