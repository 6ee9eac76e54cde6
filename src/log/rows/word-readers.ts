import { missingWords } from "../../cells/missing-words";
import { readOnce } from "../../cells/read-once";
import { plain } from "../../cells/text";
import { type LogEvent, type PlantLook } from "../log";
import { eventsIn } from "../notes/notes";
import { type CellProblem } from "../reading";
import { type Draft } from "./draft";
import { plantCell } from "./plant-cell";
import { vesselText } from "./vessels";

/** Puts one cell into the row, or says why not. */
export type CellReader = (
  cell: unknown,
  row: number,
  read: { readonly draft: Draft; readonly problems: CellProblem[] },
) => boolean;

/** Puts how the plant looks, 0 to 3, into the row. */
export function plantReader(column: number, look: keyof PlantLook): CellReader {
  return (cell, row, { draft, problems }) => {
    const found = plantCell(cell);
    if (found === undefined) return false;
    if ("reason" in found) problems.push({ row, column, used: false, reason: found.reason });
    else draft.plant = { ...draft.plant, [look]: found.value };
    return "value" in found;
  };
}

/** Puts a note into the row, and what it tells of. */
export function noteReader(): CellReader {
  const told = readOnce((text) => (missingWords.has(plain(text)) ? undefined : eventsIn(text)));
  return (cell, _row, { draft }) => {
    const text = vesselText(cell);
    const events = text === "" ? undefined : told(text);
    if (events === undefined) return false;
    draft.notes = draft.notes === undefined ? text : `${draft.notes}; ${text}`;
    draft.events = draft.events.length === 0 ? events : withNew(draft.events, events);
    return true;
  };
}

/** What is told of first, once. */
const withNew = (events: readonly LogEvent[], more: readonly LogEvent[]): readonly LogEvent[] =>
  events.concat(more.filter(({ kind }) => !events.some((event) => event.kind === kind)));

/** Puts the name of the row's pot together, from one column or from several. */
export function vesselReader(): CellReader {
  const named = readOnce((text) => !missingWords.has(plain(text)));
  return (cell, _row, { draft }) => {
    const text = vesselText(cell);
    if (text !== "" && named(text)) draft.vessel = draft.vessel === undefined ? text : `${draft.vessel} ${text}`;
    return false;
  };
}
