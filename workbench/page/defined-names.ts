import { SetDefinedNameMutation } from "@univerjs/engine-formula";
import { SCOPE_WORKBOOK_VALUE_DEFINED_NAME } from "@univerjs/sheets";
import type { Grid } from "./grid";
import { sheetChange } from "./sheet-change";

/** Makes a name known to the grid's formulas, or gives it another meaning. */
export function defineName(grid: Grid, name: string, refersTo: string): void {
  const everywhere = { localSheetId: SCOPE_WORKBOOK_VALUE_DEFINED_NAME };
  sheetChange(grid, "").run(SetDefinedNameMutation.id, { id: name, name, formulaOrRefString: refersTo, ...everywhere });
}
