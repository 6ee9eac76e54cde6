import { areaAt } from "../../../workbench/host/excel/area";
import { hostOver } from "../../../workbench/host/excel/host-globals";
import { MemoryStore } from "../../../workbench/host/excel/memory-store";
import { themes } from "../../../workbench/host/excel/office";
import type { Scalar } from "../../../workbench/host/excel/sheet-store";
import type { HostSwitches } from "../../../workbench/host/excel/switches";
import { FunctionsHost } from "../../../workbench/host/functions-host";

/** What a test has on the sheet when the pane opens. */
export interface Scene {
  readonly cells: readonly (readonly Scalar[])[];
  /** Row, column, rows, columns of each selected area, counted from 0; none means that no cells are selected. */
  readonly selected?: readonly Place[];
  readonly table?: { readonly name: string; readonly place: Place };
  readonly hiddenRows?: readonly number[];
  readonly isProtected?: boolean;
  readonly isDark?: boolean;
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly switches?: Partial<HostSwitches>;
  /** Leaves out what the host gives worksheet functions. */
  readonly withoutFunctions?: boolean;
}

export type Place = readonly [row: number, column: number, rows: number, columns: number];

declare global {
  interface Window {
    scene?: Scene;
    sheet: { readonly store: MemoryStore; readonly id: string; select(places: readonly Place[]): void; type(row: number, column: number, value: Scalar): void };
  }
}

/** Takes the place of the host's own script: the strict host over a workbook in memory, as a test has set it up. */
function raise({ cells, selected = [[0, 0, 1, 1]], table, hiddenRows = [], isProtected, isDark, settings = {}, switches, withoutFunctions }: Scene): void {
  const store = new MemoryStore({}, "Log");
  const id = store.activeSheetId();
  const width = Math.max(0, ...cells.map((row) => row.length));
  if (width > 0) store.write(areaAt(id, 0, 0, cells.length, width), cells.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? "")));
  const select = (places: readonly Place[]): void => { store.select(places.map((place) => areaAt(id, ...place))); };
  select(selected);
  const { records } = store;
  if (table !== undefined) {
    const area = areaAt(id, ...table.place);
    const columns = (cells[area.row] ?? []).slice(area.column, area.column + area.columnCount).map(String);
    records.tables.push({ id: records.newId("table"), name: table.name, area, columns, showTotals: false, style: "" });
  }
  for (const row of hiddenRows) store.setRowsHidden(areaAt(id, row, 0), true);
  records.sheet(id).protected = isProtected === true;
  for (const [key, value] of Object.entries(settings)) records.settings.set(key, value);
  Object.assign(records.switches, switches);
  const host = hostOver(store, () => themes[isDark === true ? "dark" : "light"]);
  Object.assign(window, host, withoutFunctions === true ? {} : { CustomFunctions: new FunctionsHost().runtime });
  window.sheet = { store, id, select, type: (row, column, value) => { store.type(areaAt(id, row, column), value); } };
}

raise(window.scene ?? { cells: [] });
