import { timeline } from "../../src/index";
import { type Choices } from "../choices";
import { type Drawing, drawTimeline } from "../drawing/timeline-drawing";
import { type ThemeName } from "../drawing/themes";
import { type RootZone } from "../root-zone";
import { firstDay, rangesFor, rowsFrom, type TimeRange } from "../time-range";
import { pictureWords } from "../words/picture";
import { type Actions } from "./actions";
import { button, chooser, h } from "./elements";
import { svgNode } from "./picture-node";
import { pointReader } from "./point-reader";
import { smallPots } from "./small-pots";
import { timelineTable } from "./timeline-table";

export interface PictureOptions {
  readonly choices: Choices;
  readonly width: number;
  readonly theme: ThemeName;
  readonly actions: Actions;
}

/** What the picture shows, for its title and its file. */
export const pictureTitle = ({ selection, vessel }: RootZone): string =>
  pictureWords.titleOf(selection.sheetName, vessel);

/** What was chosen last: it holds for the next log as well. */
let chosen: TimeRange = "all";

/** The same zone with the part of its log that is to be seen. */
export function inRange(zone: RootZone): RootZone {
  const range = rangesFor(zone.timeline).includes(chosen) ? chosen : "all";
  if (range === "all") return zone;
  const rows = rowsFrom(zone.reading.rows, firstDay(zone.timeline, range));
  return { ...zone, timeline: timeline(rows, { band: zone.band, earlier: zone.earlier, vessel: zone.vessel }) };
}

/** The timeline, a reader of its points for pointer, touch and keyboard, its table, and the way onto the sheet. */
export function pictureSection(whole: RootZone, options: PictureOptions): Node[] {
  const { width, theme, actions } = options;
  const zone = inRange(whole);
  if (zone.timeline.lanes.length === 0) return [];
  const drawing: Drawing = drawTimeline(zone.timeline, { width, theme, title: pictureTitle(zone) });
  return [
    h("h2", {}, pictureWords.title),
    ...rangeField(whole, actions),
    pointReader(zone, { drawing, picture: svgNode(drawing.svg), title: pictureTitle(zone), goToRow: actions.goToRow }),
    h("div", { className: "bar" }, button(pictureWords.place, actions.placePicture, { id: "place" })),
    ...smallPots(whole, options),
    timelineTable(zone, actions),
  ];
}

function rangeField({ timeline: whole }: RootZone, actions: Actions): Node[] {
  const ranges = rangesFor(whole);
  if (ranges.length === 0) return [];
  const value = ranges.includes(chosen) ? chosen : "all";
  const onChoose = (range: string): void => {
    chosen = ranges.find((each) => each === range) ?? "all";
    actions.redraw();
  };
  return [
    chooser(
      "range",
      pictureWords.range,
      ranges.map((each) => ({ value: each, text: each })),
      { value, onChoose },
    ),
  ];
}
