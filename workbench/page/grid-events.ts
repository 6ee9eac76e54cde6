import { SheetsSelectionsService } from "@univerjs/sheets";
import { merge } from "rxjs";
import { areaAt } from "../host/excel/area";
import type { StoreEvent } from "../host/excel/sheet-store";
import type { HostSwitches } from "../host/excel/switches";
import type { Grid } from "./grid";

/** Tells of the grid's events in the host's terms; while a cell is being typed into, the host is in cell-editing mode. */
export function listenTo(
  { api, univer }: Grid,
  switches: HostSwitches,
  writer: () => "person" | "add-in",
  tell: (event: StoreEvent) => void,
): void {
  const selections = univer.__getInjector().get(SheetsSelectionsService);
  merge(selections.selectionMoveEnd$, selections.selectionSet$).subscribe(() => { tell({ kind: "selection" }); });
  api.addEvent(api.Event.ActiveSheetChanged, ({ activeSheet }) => { tell({ kind: "activated", sheetId: activeSheet.getSheetId() }); });
  api.addEvent(api.Event.SheetEditStarted, () => { switches.cellEditing = true; });
  api.addEvent(api.Event.SheetEditEnded, () => { switches.cellEditing = false; });
  api.addEvent(api.Event.SheetValueChanged, ({ effectedRanges }) => {
    for (const range of effectedRanges) {
      const area = areaAt(range.getSheetId(), range.getRow(), range.getColumn(), range.getHeight(), range.getWidth());
      tell({ kind: "changed", area, by: writer() });
    }
  });
}
