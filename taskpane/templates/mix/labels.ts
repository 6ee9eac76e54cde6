import { sheetTitles } from "../titles";

/** The words beside the boxes of the mix sheet: written by the template, and looked for when the sheet is read back. */
export const mixLabels = {
  title: sheetTitles.mix,
  target: "EC to mix (mS/cm)",
  ph: "pH to mix to",
  water: "Water before any feed, EC (mS/cm)",
  litres: "Water in the tank (L)",
  full: "Feed at full strength, EC (mS/cm)",
  days: "Days since the flush (days)",
  typed: "Or the EC you want (mS/cm)",
  phTarget: "pH wanted",
  strength: "1 mL in 1 L adds (mS/cm)",
  dose: "Concentrate for the tank (mL)",
  first: "of which first, four fifths (mL)",
  mixedEc: "EC of the mixed tank (mS/cm)",
  mixedPh: "pH of the mixed tank",
  check: "Is it as meant?",
  add: "Water to add, where there is room (L)",
  swap: "Or: drain this and fill up with water (L)",
} as const;
