import { type RootZone } from "../root-zone";
import { cellAddress } from "./address";
import { counted } from "./done";

/** Columns whose cells no formula of ours takes. */
const noReadings: ReadonlySet<string> = new Set(["date", "time", "vessel", "notes", "other"]);

/**
 * The cells that the pane leaves out (a ghost reading, 2.4 in a ppm column), by name: the formulas refuse what they can
 * tell from the cell alone, but a reading that only stands out from its neighbours they take. Empty when there is none.
 */
export function leftOutInWords({ selection, reading }: RootZone): string {
  const cells = reading.problems
    .filter(({ used, column }) => !used && !noReadings.has(reading.columns[column]?.quantity ?? "other"))
    .map(({ row, column }) => cellAddress(selection.rowNumbers[row] ?? row, selection.columnNumbers[column] ?? column));
  if (cells.length === 0) return "";
  const named = cells.slice(0, 4).join(", ") + (cells.length > 4 ? " and more" : "");
  return ` Look at ${counted(cells.length, "cell")} that the pane could not believe or read (${named}): mend them, and the formulas follow.`;
}
