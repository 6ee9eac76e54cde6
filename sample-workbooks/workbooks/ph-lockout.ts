import { foundDay, phLockout, water } from "../scenario/ph-lockout";
import { tell } from "../scenario/story";
import { benchWorkbook } from "./bench-workbook";
import { askedLeached, rowsOfDays } from "./log-questions";

const entries = tell(phLockout).map(({ entry }) => entry);
const weekBefore = rowsOfDays(entries, foundDay - 7, foundDay - 1);

/** Eight weeks of one tomato in clay pebbles: the pH climbs out of its band while the EC stays in it. */
export const phLockoutWorkbook = benchWorkbook(
  {
    title: "Tomato 1 in clay pebbles: the pH climbs, the EC does not",
    story: "Invented data. A barrel mixed without acid: yellow new leaves look like hunger, but the EC is in band.",
    medium: "inert",
    feeder: "heavy",
    containerLitres: 12,
    waterEc: water.ec,
    meter: "both pens compensate to 25 C",
  },
  { entries, drawn: "pH", questions: [askedLeached("the week before it was found", weekBefore)] },
);
