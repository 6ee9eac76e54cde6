import { columnLetters, rowsUsed } from "../../src/index";
import { type RootZone } from "../root-zone";
import { rowsInWords } from "../sheet/address";
import { rowsWords as words } from "../words/rows";
import { h } from "./elements";

/** Which rows were read, from where, and how many of them were not used. */
export function rowsRead({ selection, reading, timeline }: RootZone): HTMLElement {
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
