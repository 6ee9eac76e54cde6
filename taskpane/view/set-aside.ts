import { saidOfRows } from "../../src/index";
import { type RootZone } from "../root-zone";
import { cellAddress } from "../sheet/address";
import { setAsideWords as words } from "../words/set-aside";
import { type Actions } from "./actions";
import { button, fold, h } from "./elements";

/** A page of this many lines is as many as anyone reads; the rest is counted. */
const mostLines = 200;

/** Rows and cells not used, each with its reason; pressing one goes to its cell. */
export function setAsideSection({ reading, selection }: RootZone, actions: Actions): Node[] {
  const lines = saidOfRows(reading);
  if (lines.length === 0) return [];
  const shown = (): HTMLElement[] => lines.slice(0, mostLines).map(({ row, column, rows, reason, used }, place) => {
    const [sheetRow, sheetColumn] = [selection.rowNumbers[row] ?? row, selection.columnNumbers[column ?? 0] ?? 0];
    const where = column === undefined ? words.row(sheetRow + 1) : cellAddress(sheetRow, sheetColumn);
    const id = `aside-${place}`;
    const go = button(where, () => { actions.goToCell(sheetRow, sheetColumn, id); }, { id });
    return h("li", {}, go, h("span", {}, reason + words.alike(rows.length) + (used ? words.usedAllTheSame : "")));
  });
  const more = lines.length > mostLines && h("p", {}, words.more(lines.length - mostLines));
  return [
    fold("aside-fold", words.title(lines.reduce((sum, { rows }) => sum + rows.length, 0)), () => [
      h("ul", { className: "aside" }, ...shown()),
      more,
    ]),
  ];
}
