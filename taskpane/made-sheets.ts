import { type SheetTool } from "./next-thing";
import { potFor } from "./pot-for";
import { type RootZone } from "./root-zone";
import { flushSheet } from "./templates/flush-sheet";
import { meterSheet } from "./templates/meter-sheet";
import { mixSheet } from "./templates/mix-sheet";
import { type SheetPot } from "./templates/sheet-pot";
import { type SheetTemplate } from "./templates/sheet-template";
import { watchSheet } from "./templates/watch-sheet";

const made: Readonly<Record<SheetTool, (pot?: SheetPot) => SheetTemplate>> = {
  "flush sheet": flushSheet, "mix sheet": mixSheet, "watch sheet": watchSheet, "meter sheet": meterSheet,
};

/** The sheet for a step of the course: made from the pot shown, or empty. */
export const sheetFor = (tool: SheetTool, zone?: RootZone): SheetTemplate =>
  made[tool](zone === undefined ? {} : potFor(zone, tool));
