import { ICommandService, IUniverInstanceService } from "@univerjs/core";
import { COMMAND_LISTENER_VALUE_CHANGE, getValueChangedEffectedRange, SheetsSelectionsService } from "@univerjs/sheets";
import { merge } from "rxjs";
import type { StoreEvent } from "../host/excel/sheet-store";
import type { HostSwitches } from "../host/excel/switches";
import type { Grid } from "./grid";
import { areaIn } from "./ranges";

/** Tells of the grid's events in the host's terms; while a cell is being typed into, the host is in cell-editing mode. */
export function listenTo(
  { api, univer }: Grid,
  switches: HostSwitches,
  writer: () => "person" | "add-in",
  tell: (event: StoreEvent) => void,
): void {
  const injector = univer.__getInjector();
  const selections = injector.get(SheetsSelectionsService);
  merge(selections.selectionMoveEnd$, selections.selectionSet$).subscribe(() => { tell({ kind: "selection" }); });
  api.addEvent(api.Event.ActiveSheetChanged, ({ activeSheet }) => { tell({ kind: "activated", sheetId: activeSheet.getSheetId() }); });
  api.addEvent(api.Event.SheetEditStarted, () => { switches.cellEditing = true; });
  api.addEvent(api.Event.SheetEditEnded, () => { switches.cellEditing = false; });
  const instances = injector.get(IUniverInstanceService);
  injector.get(ICommandService).onCommandExecuted((command, options) => {
    if (!COMMAND_LISTENER_VALUE_CHANGE.includes(command.id)) return;
    for (const { subUnitId: sheetId, range } of getValueChangedEffectedRange(instances, command)) {
      if (options?.["fromFormula"] === true) tell({ kind: "calculated", sheetId });
      else tell({ kind: "changed", area: areaIn(sheetId, range), by: writer() });
    }
  });
}
