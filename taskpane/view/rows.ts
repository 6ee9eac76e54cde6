import { columnLetters } from "../../src/index";
import { type RootZone } from "../root-zone";
import { rowsInWords } from "../sheet/address";
import { type Actions } from "./actions";
import { button, h } from "./elements";

/** Which rows were read, from where, and the ways to read others. */
export function rowsSection(zone: RootZone | undefined, following: boolean, actions: Actions): HTMLElement[] {
  const box = h("input", { type: "checkbox", id: "follow", checked: following });
  box.addEventListener("change", () => {
    actions.follow(box.checked);
  });
  return [
    zone === undefined ? h("p", {}, "Select rows of your log in the sheet, or one cell inside it.") : readInWords(zone),
    h(
      "div",
      { className: "bar" },
      button("Read the selection", actions.readSelection, { id: "read", className: "main" }),
      h("label", { className: "check" }, box, "Follow selection"),
    ),
  ];
}

function readInWords({ selection, reading, timeline }: RootZone): HTMLElement {
  const { sheetName, tableName, rowNumbers, columnNumbers, hiddenRows, wholeLog, headerRows } = selection;
  const from = columnLetters(columnNumbers[0] ?? 0);
  const to = columnLetters(columnNumbers.at(-1) ?? 0);
  const place = tableName === undefined ? `columns ${from} to ${to}` : `Table ${tableName}`;
  const used = reading.rows.length;
  const counts = [
    `${used} ${used === 1 ? "row" : "rows"} read`,
    reading.setAside.length > 0 ? `${reading.setAside.length} set aside` : "",
    reading.blankRows > 0 ? `${reading.blankRows} blank` : "",
    hiddenRows > 0 ? `${hiddenRows} hidden, not read` : "",
    timeline.undated > 0 ? `${timeline.undated} without a date` : "",
  ].filter((part) => part !== "");
  return h(
    "p",
    { id: "rows-read" },
    h("strong", {}, `${sheetName}, ${rowsInWords(rowNumbers.slice(headerRows))}`),
    `, ${place}${wholeLog ? " (the whole log around the cell)" : ""}: ${counts.join(", ")}.`,
  );
}
