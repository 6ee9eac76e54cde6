import { type Act, type PotJudgement } from "../src/index";

/** The sheets that the pane can make. */
export const sheetTools = ["flush sheet", "mix sheet", "watch sheet", "meter sheet"] as const;
export type SheetTool = (typeof sheetTools)[number];

/** What the pane can open for a step of the course: a sheet, or the place in the log where its readings go. */
export type Tool = SheetTool | "next row" | "plant columns";

/** The tool that carries out an act; an act that is missing here is done at the pot alone. */
const toolFor: Partial<Record<Act, Tool>> = {
  flush: "flush sheet",
  "go on flushing": "flush sheet",
  "reset the pH": "flush sheet",
  "feed by the ramp": "mix sheet",
  "lower the feed": "mix sheet",
  "raise the feed": "mix sheet",
  "mend the input pH": "mix sheet",
  "treat the alkalinity": "mix sheet",
  "steer the pH": "mix sheet",
  "dilute the tank": "mix sheet",
  "change the tank": "mix sheet",
  "measure again now": "next row",
  "look at the plant": "plant columns",
  "check the meter": "meter sheet",
  "let more run off": "watch sheet",
  "water less": "watch sheet",
  "water more often": "watch sheet",
  "stop flushing": "watch sheet",
  "re-wet slowly": "watch sheet",
};

/** The one thing to press: the tool of the first step that has one, and that step's act. */
export function nextThing({ course }: PotJudgement): { readonly tool: Tool; readonly act: Act } | undefined {
  for (const { act } of course) {
    const tool = toolFor[act];
    if (tool !== undefined) return { tool, act };
  }
  return undefined;
}
