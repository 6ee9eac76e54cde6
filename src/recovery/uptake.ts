import { atMostPoured } from "../diagnosis/at-most-poured";
import { type Litres } from "../quantities";
import { Refusal } from "../refusal";

const hoursPerDay = 24;
/** Shorter than a quarter of an hour is a difference of two times as the sheet counts it, in days. Common practice. */
const shortestHours = 0.25;
/** Longer than a year between two irrigations is a mistyped cell. Common practice. */
const longestHours = 8784;

/**
 * Uptake: litres a day that the plant drank or the pot lost to the air.
 *
 * Feeds recovery: roots that drink again are the first good news, days before a leaf shows it.
 *
 * Formula:  uptake = (poured - drained) 24 / hours
 * Valid:    a pot as wet after this irrigation as after the one before; hours = the time between the two
 * Source:   water balance
 *
 * @param hours since the irrigation before; a day unless given
 * @returns L a day, 0 or more
 * @throws {Refusal} `impossible` when more drained than was poured in, or the hours are hardly any or more than a year
 * @example uptake(litres(2), litres(0.5), 48) // 0.75
 */
export function uptake(poured: Litres, drained: Litres, hours: number = hoursPerDay): number {
  atMostPoured(drained, poured);
  if (hours >= shortestHours && hours <= longestHours) return ((poured - drained) * hoursPerDay) / hours;
  const allowed = `${shortestHours} to ${longestHours} h; a difference of two times in a sheet is in days, 24 times that is hours`;
  throw new Refusal("impossible", { quantity: "time between irrigations", given: hours, unit: "h", allowed });
}
