import { type SheetTool } from "../next-thing";

/** What is said of a sheet of ours that is in view. */
export const ownWords: Readonly<Record<Exclude<SheetTool, "flush sheet">, string>> = {
  "mix sheet":
    "This sheet works out a feed, and is no log. Fill in its boxes from the top down: the shaded cells follow.",
  "watch sheet":
    "This sheet is for the days after something was done. At each look write pH, EC and posture into its boxes, and what you see into Notes.",
  "meter sheet":
    "This sheet keeps the calibrations of the meters, and is no log. Write one line for each: what is due and what to trust stands at its top.",
};

export const daysWords = { read: "Judge the days after" } as const;
