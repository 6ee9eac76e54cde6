import { barrelDay, foundDay, phLockout, water } from "../scenario/ph-lockout";
import { tell } from "../scenario/story";
import { benchWorkbook } from "./bench-workbook";
import { askedDrift, askedLeached, askedRecovery, askedVerdict, rowsOfDays } from "./log-questions";

const entries = tell(phLockout).map(({ entry }) => entry);
const weekBefore = rowsOfDays(entries, foundDay - 7, foundDay - 1);
const wrongBarrel = rowsOfDays(entries, barrelDay, foundDay);
const sinceFound = rowsOfDays(entries, foundDay, phLockout.days - 1);
const firstWeek = rowsOfDays(entries, foundDay, foundDay + 6);
const lastWeek = rowsOfDays(entries, phLockout.days - 7, phLockout.days - 1);

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
  {
    entries,
    drawn: "pH",
    questions: [
      askedVerdict("the week before it was found", weekBefore),
      askedLeached("the week before it was found", weekBefore),
      askedDrift("Runoff pH", "while the barrel was wrong", wrongBarrel),
      askedRecovery("Runoff pH", "in the first week after that", firstWeek),
      askedRecovery("Runoff pH", "in all the days after that", sinceFound),
      askedVerdict("the last week", lastWeek),
    ],
  },
);
