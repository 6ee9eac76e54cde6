import { ownSheetNote } from "../../src/index";
import { acidLines } from "./acid-lines";
import { portionKey } from "./flush/keys";
import { flushLabels, mostPortions } from "./flush/labels";
import { bandOf, potLines } from "./flush/pot";
import { portionLines } from "./flush/portions";
import { top } from "./flush/top";
import { caution, gap, heading, note, title } from "./lines";
import { type SheetPot } from "./sheet-pot";
import { sheetTemplate, type SheetTemplate } from "./sheet-template";
import { watchLines } from "./watch/watch-lines";

const care = [
  caution(
    "Pour a portion, let it drain, measure the last of the drain, write it down, read the check. Never let the pot drink its drain again.",
  ),
  caution(
    "Drain water is salty: keep it off floors with pumps, lamps and leads, and pour it where your local rules allow.",
  ),
];

/** What the log reader takes for a flush, once water was poured. */
const flushed = 'IF(N({poured:B})=0,"","flushed with "&FIXED({poured:B},1,TRUE)&" L")';

const feedOf = (days: number): string => `IF(COUNT({full},{water})<2,"",RUNOFF.RECOVERYFEED({full},{water},${days}))`;

/**
 * A sheet for the flush of one pot: what to do now at the top, portions with the stop check beside them, and the week
 * after.
 */
export function flushSheet(pot: SheetPot = {}): SheetTemplate {
  const band = bandOf(pot);
  return sheetTemplate({
    name: "Flush",
    lines: [
      title(pot.name === undefined ? flushLabels.title : `${flushLabels.title}: ${pot.name}`),
      note(`${ownSheetNote} Every EC in mS/cm at 25 C.`),
      ...top(band),
      gap,
      ...potLines(pot),
      gap,
      ...portionLines(band),
      gap,
      heading("Acid for what you pour", "", "", "", "", "", "How to read it"),
      ...acidLines({ litres: "{poured:D}", target: "{pourPh}", reasonAt: 6, reasonLines: 22 }),
      gap,
      ...watchLines(feedOf, flushed),
      gap,
      ...care,
    ],
    widths: [31, 19, 16, 11, 11, 24, 46, 22, 3, 12, 12, 12, 20],
    printColumns: 8,
    landscape: false,
    chart: {
      title: "Runoff EC, reading by reading (mS/cm)",
      cells: `{portions:E}:{${portionKey(mostPortions)}:E}`,
      over: "{container:J}:{limits:M}",
    },
  });
}
