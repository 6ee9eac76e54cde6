import { type Act } from "../../src/index";
import { type Tool } from "../next-thing";

/** What stands on the one button, by what it opens. */
const toolWords: Readonly<Record<Tool, string>> = {
  "flush sheet": "Plan the flush for this pot",
  "mix sheet": "Mix the feed for this pot",
  "watch sheet": "Watch this pot for a week",
  "meter sheet": "Check the meter",
  "next row": "Go to the next empty row",
  "plant columns": "Note how the plant looks",
};

/** Where an act has a better word than its tool. */
const actWords: Partial<Record<Act, string>> = {
  "go on flushing": "Go on with the flush of this pot",
  "reset the pH": "Plan the rinse for this pot",
  "feed by the ramp": "Mix the recovery feed",
  "mend the input pH": "Work out the acid for this feed",
  "treat the alkalinity": "Work out the acid for this water",
  "dilute the tank": "Work out the water to add",
  "change the tank": "Mix a fresh tank",
};

export const nextThingWords = (tool: Tool, act: Act): string => actWords[act] ?? toolWords[tool];
