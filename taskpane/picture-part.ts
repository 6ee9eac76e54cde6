import { drawTimeline } from "./drawing/timeline-drawing";
import { type RootZone } from "./root-zone";
import { placePicture } from "./sheet/place-picture";
import { currentTheme } from "./theme";
import { inRange, pictureSection, pictureTitle } from "./view/picture";
import { pngOf } from "./view/picture-png";
import { pictureWords } from "./words/picture";

// The picture and what it is drawn with: a script of its own, so that the verdict is there sooner.

export { pictureSection };

/** The width at which the picture is placed on the sheet, in pixels. */
const sheetPictureWidth = 640;

/** Puts the timeline on the log's sheet, and says where. */
export async function placeTimeline(whole: RootZone): Promise<string> {
  const zone = inRange(whole);
  const theme = currentTheme() === "dark" ? "dark" : "light";
  const drawing = drawTimeline(zone.timeline, { width: sheetPictureWidth, theme, title: pictureTitle(zone) });
  const { address, earlierStays } = await placePicture(zone.selection.sheetId, {
    ...drawing,
    png: await pngOf(drawing),
  });
  const placed = pictureWords.placed(zone.selection.sheetName, address);
  return earlierStays ? `${placed} ${pictureWords.earlierStays}` : placed;
}
