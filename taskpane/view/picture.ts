import { drawTimeline } from "../drawing/timeline-drawing";
import { type ThemeName } from "../drawing/themes";
import { type RootZone } from "../root-zone";
import { pictureWords } from "../words/picture";
import { type Actions } from "./actions";
import { button, h } from "./elements";
import { svgNode } from "./picture-node";
import { pointReader } from "./point-reader";
import { timelineTable } from "./timeline-table";

export interface PictureOptions {
  readonly width: number;
  readonly theme: ThemeName;
  readonly actions: Actions;
}

/** What the picture shows, for its title and its file. */
export const pictureTitle = ({ selection, vessel }: RootZone): string => pictureWords.titleOf(selection.sheetName, vessel);

/** The timeline, a reader of its points for pointer, touch and keyboard, its table, and the way onto the sheet. */
export function pictureSection(zone: RootZone, { width, theme, actions }: PictureOptions): Node[] {
  if (zone.timeline.lanes.length === 0) return [];
  const drawing = drawTimeline(zone.timeline, { width, theme, title: pictureTitle(zone) });
  return [
    h("h2", {}, pictureWords.title),
    pointReader(zone, { drawing, picture: svgNode(drawing.svg), title: pictureTitle(zone), goToRow: actions.goToRow }),
    h("div", { className: "bar" }, button(pictureWords.place, actions.placePicture, { id: "place" })),
    timelineTable(zone, actions),
  ];
}
