import { flushDay, saltBuildup, water } from "../scenario/salt-buildup";
import { tell } from "../scenario/story";
import { benchWorkbook } from "./bench-workbook";
import { flushDaySheet } from "./flush-day-sheet";
import { askedCeiling, askedDrift, askedLeached, askedRecovery, askedVerdict, rowsOfDays } from "./log-questions";

const told = tell(saltBuildup);
const entries = told.map(({ entry }) => entry);
const flush = told.findIndex(({ entry }) => entry.day === flushDay);
const buildUp = rowsOfDays(entries, 0, flushDay - 1);
const weekBefore = rowsOfDays(entries, flushDay - 7, flushDay - 1);
const sinceFlush = rowsOfDays(entries, flushDay, saltBuildup.days - 1);
const lastWeek = rowsOfDays(entries, saltBuildup.days - 7, saltBuildup.days - 1);

/** 75 days of one pepper in coir: salt builds up, the pH slides, a flush, and the recovery. */
export const saltBuildupWorkbook = benchWorkbook(
  {
    title: "Pepper 2 in coir: salt builds up, then a flush",
    story: "Invented data. The same 2 L every day while the plant drinks more and more: less drains, salt stays.",
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
      askedVerdict("the week before the flush", weekBefore),
      askedLeached("the week before the flush", weekBefore),
      askedCeiling("the week before the flush", weekBefore),
      askedDrift("Runoff EC", "up to the flush", buildUp),
      askedDrift("Runoff pH", "up to the flush", buildUp),
      askedRecovery("Runoff EC", "in all the days after that", sinceFlush),
      askedRecovery("Runoff pH", "in all the days after that", sinceFlush),
      askedVerdict("the last week", lastWeek),
      askedLeached("the last week", lastWeek),
    ],
    more: [flushDaySheet({ vessel: saltBuildup.vessel, before: entries[flush - 1], portions: told[flush]?.portions ?? [], targetEc: 3 })],
  },
);
