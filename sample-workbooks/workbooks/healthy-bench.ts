import { healthyBench, water } from "../scenario/healthy-bench";
import { tell } from "../scenario/story";
import { benchWorkbook } from "./bench-workbook";
import { askedCeiling, askedDrift, askedLeached, askedVerdict, rowsOfDays } from "./log-questions";

const entries = tell(healthyBench).map(({ entry }) => entry);
const lastWeeks = rowsOfDays(entries, healthyBench.days - 21, healthyBench.days - 1);

/** Two months of one strawberry in peat with enough drain: what a quiet log looks like. */
export const healthyBenchWorkbook = benchWorkbook(
  {
    title: "Strawberry 1 in peat: a quiet log",
    story: "Invented data. Watered every second day; about a third drains, and the salt ratio settles.",
    medium: "peat",
    feeder: "light",
    containerLitres: 5,
    waterEc: water.ec,
    meter: "both pens compensate to 25 C",
  },
  {
    entries,
    drawn: "EC",
    questions: [
      askedVerdict("the last three weeks", lastWeeks),
      askedLeached("the last three weeks", lastWeeks),
      askedCeiling("the last three weeks", lastWeeks),
      askedDrift("Runoff EC", "the last three weeks", lastWeeks),
    ],
  },
);
