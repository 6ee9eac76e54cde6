import { type Days, type SheetDate } from "../quantities";
import { Refusal } from "../refusal";

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
 * @throws {Refusal} `order` when the last calibration lies after today; `impossible` for an interval below a day
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
  if (!(every >= 1)) {
    throw new Refusal("impossible", {
      quantity: "days between calibrations",
      given: every,
      allowed: "1 or more",
    });
  }
  return every - since;
}
