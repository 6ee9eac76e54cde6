import { type Days, type SheetDate } from "../quantities";
import { Refusal } from "../refusal";

const called = "days between calibrations";
/** Days: a meter that is not calibrated once a year is not calibrated. Common practice. */
const longestInterval = 366;

/**
 * Days left until the next calibration; negative when it is overdue.
 *
 * Feeds the trust in the readings. Clock times are dropped: it counts calendar days.
 *
 * Formula:  days left = last day + interval - today
 * Source:   definition
 *
 * @param last sheet date of the last calibration
 * @param every days between calibrations, at least 1
 * @param today sheet date
 * @returns whole days when `every` is whole
 * @throws {Refusal} `order` when the last calibration lies after today; `impossible` for an interval below a day,
 *   `implausible` above a year
 * @example calibrationDue(sheetDate(45000), days(14), sheetDate(45010)) // 4
 */
export function calibrationDue(last: SheetDate, every: Days, today: SheetDate): number {
  const since = Math.floor(today) - Math.floor(last);
  if (!(since >= 0)) {
    throw new Refusal("order", {
      quantity: `last calibration ${-since === 1 ? "a day" : `${-since} days`} after today`,
      allowed: "today or earlier; check the year and the order of day and month",
    });
  }
  if (!(every >= 1)) throw new Refusal("impossible", { quantity: called, given: every, allowed: "1 or more" });
  if (every > longestInterval)
    throw new Refusal("implausible", { quantity: called, given: every, allowed: "7 to 30, at most a year" });
  return every - since;
}
