import { type Conclusion } from "../conclusion";
import { step } from "../course/step";
import { daysBetween, tells } from "../entry";
import { type Facts } from "../facts";
import { tankDays } from "../limits";
import { tankSays } from "../says/other-says";

/** The solution is stirred and read again, unless a second reading agrees already. */
export const stirred = ({ ec }: Facts): Conclusion["steps"] =>
  ec?.witness === "agreed" ? [] : [step("measure again now", "now", tankSays.stir)];

/** Topped up for three weeks and never changed. */
export function isOld({ evidence, entries }: Facts): boolean {
  const since = entries.slice(entries.map((entry) => tells(entry, "tank changed")).lastIndexOf(true) + 1);
  const isTopped = since.some((entry) => tells(entry, "topped up"));
  return isTopped && (daysBetween(since[0], evidence.at(-1)) ?? 0) > tankDays;
}
