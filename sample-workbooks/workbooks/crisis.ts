import { crisis, water } from "../scenario/crisis";
import { tell } from "../scenario/story";
import { benchWorkbook } from "./bench-workbook";
import { askedDrift, askedLeached, askedVerdict, rowsOfDays } from "./log-questions";

const entries = tell(crisis).map(({ entry }) => entry);
const whole = rowsOfDays(entries, 0, crisis.days - 1);
const lastWeek = rowsOfDays(entries, crisis.days - 7, crisis.days - 1);

/** Eighteen days of one pepper in coir, up to the morning on which its leaves are burnt. */
export const crisisWorkbook = benchWorkbook(
  {
    title: "Pepper 5 in coir: burnt leaves, and the runoff EC climbs",
    story: "Invented data. The log ends on the day of the trouble: the question is what to do now.",
    medium: "coir",
    feeder: "medium",
    containerLitres: 10,
    waterEc: water.ec,
    meter: "both pens compensate to 25 C",
  },
  {
    entries,
    drawn: "EC",
    questions: [
      askedVerdict("the last week", lastWeek),
      askedLeached("the last week", lastWeek),
      askedDrift("Runoff EC", "in all the days", whole),
    ],
    isMediumKept: true,
  },
);
