import { ICommandService } from "@univerjs/core";
import { unitId } from "./book-data";
import type { Grid } from "./grid";

/** Changes what the grid keeps beside the cells of one sheet; a person's undo leaves these alone. */
export interface SheetChange {
  readonly sheetId: string;
  readonly run: (mutation: string, params: object) => void;
}

export function sheetChange({ univer }: Grid, sheetId: string): SheetChange {
  const commands = univer.__getInjector().get(ICommandService);
  return { sheetId, run: (mutation, params) => { commands.syncExecuteCommand(mutation, { unitId, subUnitId: sheetId, sheetId, ...params }); } };
}
