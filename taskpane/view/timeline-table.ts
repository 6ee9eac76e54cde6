import { type LaneName, type SeriesRole } from "../../src/index";
import { dayInWords } from "../drawing/time-axis";
import { type RootZone } from "../root-zone";
import { type Actions } from "./actions";
import { button, fold, h } from "./elements";

/** A table of more rows than this is no longer an alternative to a picture; the latest are shown. */
const mostRows = 500;

interface Column {
  readonly lane: LaneName;
  readonly role: SeriesRole;
  readonly decimals: number;
  readonly heading: string;
}

/** The readings behind the picture as a table, built when it is opened: for screen readers, and for those who prefer figures. */
export const timelineTable = (zone: RootZone, actions: Actions): HTMLElement =>
  fold("table-fold", "The same as a table", () => {
    const place = h("div", { className: "wide", id: "table", tabIndex: 0, role: "region", aria: { label: "The readings as a table" } }, table(zone, actions));
    const hidden = zone.timeline.readings.length - mostRows;
    return [hidden > 0 && h("p", { className: "why" }, `The latest ${mostRows} readings; ${hidden} older ones are in the picture only.`), place];
  });

function table({ timeline, selection }: RootZone, actions: Actions): HTMLElement {
  const columns: Column[] = timeline.lanes.flatMap(({ name, unit, decimals, series }) =>
    series.map(({ role }) => ({ lane: name, role, decimals, heading: `${name}${role === "only" ? "" : role === "input" ? " in" : " runoff"}${unit === "" ? "" : `, ${unit}`}` })),
  );
  const heads = ["Row", timeline.axis === "dates" ? "Date" : "Reading", ...columns.map(({ heading }) => heading), "Flags", "Events"];
  const rows = timeline.readings.slice(-mostRows).map(({ row, day, values, flags, events }) => {
    const sheetRow = (selection.rowNumbers[row] ?? row) + 1;
    const figures = columns.map(({ lane, role, decimals }) => values.find((each) => each.lane === lane && each.role === role)?.value.toFixed(decimals) ?? "");
    const told = [timeline.axis === "dates" ? dayInWords(day) : String(day), ...figures, flagsInWords(flags), events.map(({ kind }) => kind).join(", ")];
    const id = `table-${sheetRow}`;
    const go = button(String(sheetRow), () => { actions.goToRow(row, id); }, { id, aria: { label: `Row ${sheetRow}` } });
    return h("tr", {}, h("th", { scope: "row" }, go), ...told.map((text) => h("td", {}, text)));
  });
  const head = h("tr", {}, ...heads.map((heading) => h("th", { scope: "col" }, heading)));
  return h("table", {}, h("thead", {}, head), h("tbody", {}, ...rows));
}

const flagsInWords = (flags: readonly string[] | undefined): string => (flags === undefined ? "" : flags.length === 0 ? "in band" : flags.join(", "));
