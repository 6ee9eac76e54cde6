import { sheetTitles } from "../titles";

/**
 * The words beside the boxes of the flush sheet: written by the template, and looked for when the sheet is read back.
 */
export const flushLabels = {
  title: sheetTitles.flush,
  next: "Pour next (L)",
  poured: "Poured so far (L)",
  now: "Runoff EC now (mS/cm)",
  stop: "STOP when",
  says: "The stop check says",
  left: "Litres still needed (L)",
  pot: "Pot",
  container: "Container (L)",
  water: "EC of what you pour (mS/cm)",
  medium: "Medium",
  feeder: "Feeder",
  ecNow: "Runoff EC before (mS/cm)",
  phNow: "Runoff pH before",
  full: "Feed at full strength, EC (mS/cm)",
  day: "Day and time of the flush",
  typed: "Another EC to reach (mS/cm)",
  phTyped: "Another pH to pour at",
  limits: "Limits: pH, pH, EC, EC",
  target: "EC to reach (mS/cm)",
  before: "before the flush",
  portion: (number: number): string => `portion ${number}`,
} as const;

/** More than three container capacities in quarters. */
export const mostPortions = 14;
