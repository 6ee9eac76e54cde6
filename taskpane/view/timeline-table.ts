import { type LaneName, type SeriesRole } from "../../src/index";
import { dayInWords } from "../drawing/time-axis";
import { type RootZone } from "../root-zone";
import { readingsWords as words } from "../words/readings";
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

/**
 * The readings behind the picture as a table, built when it is opened: for screen readers, and for those who prefer
 * figures.
 */
export const timelineTable = (zone: RootZone, actions: Actions): HTMLElement =>
  fold("table-fold", words.table, () => {
    const place = h(
      "div",
      { className: "wide", id: "table", tabIndex: 0, role: "region", aria: { label: words.tableLabel } },
      table(zone, actions),
    );
    const hidden = zone.timeline.readings.length - mostRows;
    return [hidden > 0 && h("p", { className: "why" }, words.latest(mostRows, hidden)), place];
  });

function table({ timeline, selection }: RootZone, actions: Actions): HTMLElement {
  const columns: Column[] = timeline.lanes.flatMap(({ name, unit, decimals, series }) =>
    series.map(({ role }) => ({
      lane: name,
      role,
      decimals,
      heading: `${name} ${words.side(role)}`.trim() + (unit === "" ? "" : `, ${unit}`),
    })),
  );
  const heads = [
    words.row,
    timeline.axis === "dates" ? words.date : words.reading,
    ...columns.map(({ heading }) => heading),
    words.flags,
    words.events,
  ];
  const rows = timeline.readings.slice(-mostRows).map(({ row, day, values, flags, events }) => {
    const sheetRow = (selection.rowNumbers[row] ?? row) + 1;
    const figures = columns.map(
      ({ lane, role, decimals }) =>
        values.find((each) => each.lane === lane && each.role === role)?.value.toFixed(decimals) ?? "",
    );
    const told = [
      timeline.axis === "dates" ? dayInWords(day) : String(day),
      ...figures,
      flagsInWords(flags),
      events.map(({ kind }) => kind).join(", "),
    ];
    const id = `table-${sheetRow}`;
    const go = button(
      String(sheetRow),
      () => {
        actions.goToRow(row, id);
      },
      { id, aria: { label: words.rowOf(sheetRow) } },
    );
    return h("tr", {}, h("th", { scope: "row" }, go), ...told.map((text) => h("td", {}, text)));
  });
  const head = h("tr", {}, ...heads.map((heading) => h("th", { scope: "col" }, heading)));
  return h("table", {}, h("thead", {}, head), h("tbody", {}, ...rows));
}

const flagsInWords = (flags: readonly string[] | undefined): string =>
  flags === undefined ? "" : flags.length === 0 ? words.inBand : flags.join(", ");
