import { daysOn } from "../days-on-sheet";
import { type OwnSheet } from "../sheet/own-sheet";
import { flushWords } from "../words/flush";
import { daysWords, ownWords } from "../words/own-sheet";
import { button, h } from "./elements";

export interface OwnActions {
  readonly backToLog: () => void;
  readonly readDays: () => void;
}

/** The ways on from a sheet of ours: back to the log, and to what is written of the days after, where it has them. */
export const waysOn = (own: OwnSheet, actions: OwnActions): HTMLElement =>
  h(
    "div",
    { className: "bar" },
    h("span", { className: "why" }, flushWords.onSheet(own.sheetName)),
    button(flushWords.back, actions.backToLog, { id: "back-to-log" }),
    own.kind !== "meter sheet" &&
      daysOn(own) !== undefined &&
      button(daysWords.read, actions.readDays, { id: "read-days" }),
  );

/** What a mix, watch or meter sheet is for, while it is in view. */
export function ownNotice(own: OwnSheet & { readonly kind: keyof typeof ownWords }, actions: OwnActions): Node[] {
  const title = own.cells[0]?.[0];
  return [
    h("h2", {}, typeof title === "string" ? title : own.sheetName),
    waysOn(own, actions),
    h("p", { id: "own-said" }, ownWords[own.kind]),
  ];
}
