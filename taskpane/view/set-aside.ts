import { saidOfRows } from "../../src/index";
import { type RootZone } from "../root-zone";
import { cellAddress } from "../sheet/address";
import { type Actions } from "./actions";
import { button, fold, h } from "./elements";

/** A page of this many lines is as many as anyone reads; the rest is counted. */
const mostLines = 200;

/** A line that speaks for many rows says so. */
const alike = ({ length }: readonly number[]): string => (length === 1 ? "" : `, and ${length - 1} rows like it`);

/** Rows and cells not used, each with its reason; pressing one goes to its cell. */
export function setAsideSection({ reading, selection }: RootZone, actions: Actions): Node[] {
  const lines = saidOfRows(reading);
  if (lines.length === 0) return [];
  const shown = (): HTMLElement[] => lines.slice(0, mostLines).map(({ row, column, rows, reason, used }, place) => {
    const [sheetRow, sheetColumn] = [selection.rowNumbers[row] ?? row, selection.columnNumbers[column ?? 0] ?? 0];
    const where = column === undefined ? `Row ${sheetRow + 1}` : cellAddress(sheetRow, sheetColumn);
    const id = `aside-${place}`;
    const go = button(where, () => { actions.goToCell(sheetRow, sheetColumn, id); }, { id });
    return h("li", {}, go, h("span", {}, `${reason}${alike(rows)}${used ? " (used all the same)" : ""}`));
  });
  const more = lines.length > mostLines && h("p", {}, `and ${lines.length - mostLines} more`);
  return [fold("aside-fold", `Set aside or doubted: ${lines.reduce((sum, { rows }) => sum + rows.length, 0)}`, () => [h("ul", { className: "aside" }, ...shown()), more])];
}
