import { ownSheetNote } from "../../src/index";
import { caution, ecBox, gap, heading, input, note, title } from "./lines";
import { type SheetPot } from "./sheet-pot";
import { sheetTemplate, type SheetTemplate } from "./sheet-template";
import { sheetTitles } from "./titles";
import { watchLines } from "./watch/watch-lines";

const feedOf = (days: number): string =>
  `IF(COUNT({full},{water})<2,"",IF({ramp}="yes",RUNOFF.RECOVERYFEED({full},{water},${days}),{full}))`;

/** A sheet for the week after anything was done to a pot: a flush, a pH reset, a weaker feed, a diluted tank. */
export function watchSheet(pot: SheetPot = {}): SheetTemplate {
  return sheetTemplate({
    name: "Watch",
    lines: [
      title(pot.name === undefined ? sheetTitles.watch : `${sheetTitles.watch}: ${pot.name}`),
      note(`${ownSheetNote} Every EC in mS/cm at 25 C.`),
      gap,
      heading("What was done", "Boxes are yours", "", "", "", "", "", ""),
      input("done", "What was done to this pot", {
        accepts: {
          words: ["flush", "pH reset", "weaker feed", "more run off", "tank diluted", "other"],
          hint: "the hours count from it",
        },
      }),
      input("day", "Day and time of it", {
        value: pot.day,
        accepts: { date: true, hint: "when it was done" },
        numberFormat: "yyyy-mm-dd hh:mm",
      }),
      input("full", "Feed at full strength, EC (mS/cm)", {
        value: pot.feedEc,
        ...ecBox("what this crop gets in quiet weeks"),
      }),
      input("water", "Water before any feed, EC (mS/cm)", {
        value: pot.waterEc,
        ...ecBox("0 for pure water", [0, 20]),
      }),
      input("ramp", "Feed by the ramp", {
        value: pot.daysSinceFlush === undefined ? "no" : "yes",
        accepts: { words: ["yes", "no"], hint: "yes after a flush or a reset: from half strength to full in a week" },
      }),
      gap,
      ...watchLines(feedOf, 'IF({done}="","",{done})'),
      gap,
      caution(
        "Drain water is salty: keep it off floors with pumps, lamps and leads, and pour it where your local rules allow.",
      ),
    ],
    widths: [34, 19, 16, 11, 11, 26, 64, 24],
    leastHeight: 40,
    landscape: true,
  });
}
