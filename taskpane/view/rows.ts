import { columnLetters, rowsUsed } from "../../src/index";
import { type RootZone } from "../root-zone";
import { rowsInWords } from "../sheet/address";
import { rowsWords as words } from "../words/rows";
import { type Actions } from "./actions";
import { button, h } from "./elements";

/**
 * Which rows were read, from where, and the ways to read others; the one thing to press as long as nothing was read.
 */
export function rowsSection(zone: RootZone | undefined, following: boolean, actions: Actions): HTMLElement[] {
  const box = h("input", { type: "checkbox", id: "follow", checked: following });
  box.addEventListener("change", () => {
    actions.follow(box.checked);
  });
  return [
    zone === undefined ? h("p", {}, words.select) : readInWords(zone),
    h(
      "div",
      { className: "bar" },
      button(words.read, actions.readSelection, { id: "read", className: zone === undefined ? "main" : "" }),
      h("label", { className: "check" }, box, words.follow),
    ),
  ];
}

function readInWords({ selection, reading, timeline }: RootZone): HTMLElement {
  const { sheetName, tableName, rowNumbers, columnNumbers, hiddenRows, wholeLog, headerRows } = selection;
  const place =
    tableName === undefined
      ? words.columns(columnLetters(columnNumbers[0] ?? 0), columnLetters(columnNumbers.at(-1) ?? 0))
      : words.table(tableName);
  const counts = [
    words.rowsRead(rowsUsed(reading)),
    ...some(reading.setAside.length, words.setAside),
    ...some(reading.blankRows, words.blank),
    ...some(hiddenRows, words.hidden),
    ...some(timeline.undated, words.undated),
  ];
  return h(
    "p",
    { id: "rows-read" },
    h("strong", {}, `${sheetName}, ${rowsInWords(rowNumbers.slice(headerRows))}`),
    `, ${place}${wholeLog ? words.wholeLog : ""}: ${counts.join(", ")}.`,
  );
}

const some = (count: number, said: (count: number) => string): string[] => (count > 0 ? [said(count)] : []);
