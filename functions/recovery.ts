import {
  leachingShare,
  type Litres,
  litres,
  recoveryTrend,
  type Share,
  uptake as uptakeOf,
  watering as wateringOf,
} from "../src/index";
import { eachCell, judged, single, whole } from "./answers";
import { amount, flag, one, reading } from "./cells";
import { anyValue, datedReadings } from "./dated";

/**
 * Uptake: litres a day that the plant drank or the pot lost to the air. Roots that drink again are the first good news.
 * @customfunction UPTAKE
 * @helpurl https://localhost:3000/docs/functions.html#uptake
 * @param input_litres L poured in, cell or range
 * @param runoff_litres L drained, cell or range
 * @param [hours] hours since the irrigation before, cell or range; 24 if the argument is left out, a blank cell or 0 gives a blank
 * @returns L a day
 * @remarks Holds when the pot is as wet after this irrigation as after the one before. Nothing poured is blank; a runoff of 0 counts as none, also where a desktop version hands a blank over as 0. More runoff than input is refused.
 * @example =RUNOFF.UPTAKE(2, 0.5) -> 1.5
 * @example =RUNOFF.UPTAKE(2, 0.5, 48) -> 0.75
 * @see common practice
 */
export function uptake(input_litres: any[][], runoff_litres: any[][], hours?: any[][]): any[][] {
  const [poured, drained] = [
    reading(input_litres, litres, "input volume"),
    amount(runoff_litres, litres, "runoff volume"),
  ];
  if (hours == null) return eachCell((input: Litres, runoff: Litres) => uptakeOf(input, runoff), poured, drained);
  return eachCell(uptakeOf, poured, drained, reading(hours, anyValue, "time between irrigations"));
}

/**
 * Litres to pour each time, so that the plant has its uptake and the wanted share drains.
 * @customfunction WATERING
 * @helpurl https://localhost:3000/docs/functions.html#watering
 * @param uptake_litres_a_day L a day the pot takes up, as UPTAKE finds it, cell or range
 * @param leaching_fraction 0 to 0.6, the share of each watering that is to drain, cell or range
 * @param [waterings_a_day] 1 if the argument is left out, 0.5 for one every second day, cell or range; a blank cell gives a blank
 * @returns L each time
 * @remarks Follow the uptake as the plant grows. A fraction of 0 lets nothing drain, and salt stays; a fraction above 0.6 is refused.
 * @example =RUNOFF.WATERING(1.2, 0.2, 3) -> 0.5
 * @see water balance
 */
export function watering(uptake_litres_a_day: any[][], leaching_fraction: any[][], waterings_a_day?: any[][]): any[][] {
  const uptakeADay = reading(uptake_litres_a_day, litres, "uptake a day");
  const fraction = amount(leaching_fraction, leachingShare, "leaching fraction");
  if (waterings_a_day == null)
    return eachCell((taken: Litres, drained: Share) => wateringOf(taken, drained), uptakeADay, fraction);
  return eachCell(wateringOf, uptakeADay, fraction, reading(waterings_a_day, anyValue, "waterings a day"));
}

/**
 * Recovery trend: recovered / recovering / likely recovering / holding / relapsed / worsening / cannot say, by the distance of the readings to their limits.
 * @customfunction RECOVERYTREND
 * @helpurl https://localhost:3000/docs/functions.html#recoverytrend
 * @param dates dates of the sheet, or day numbers from 0, column or row, in any order
 * @param values runoff pH, or runoff EC in the unit of the limits, since the flush, column or row
 * @param low lower limit, in the readings' unit
 * @param high upper limit, in the readings' unit
 * @param [explain] TRUE adds the reasons in the cell to the right
 * @returns words
 * @remarks "recovered" needs the last two readings within the limits; "relapsed" the last two outside after one within; "likely recovering" 2 or 3 readings, each nearer by more than the meter can be off; "recovering" and "worsening" a trend over 4 readings or more that chance shows less than 1 in 20 times. Give the readings since the flush only. Works from above and from below. A low limit of 0 is none; a high limit of 0 counts as blank.
 * @example =RUNOFF.RECOVERYTREND({46023;46024;46025;46026}, {6;5.2;4.6;4.1}, 2, 3.5) -> recovering
 * @example =RUNOFF.RECOVERYTREND({46023;46024}, {6;5.2}, 2, 3.5) -> likely recovering
 * @example =RUNOFF.RECOVERYTREND({46023;46024;46025}, {4.1;3.4;3.2}, 2, 3.5) -> recovered
 * @see [mann-1945]
 * @see [sen-1968]
 */
export function recoverytrend(
  dates: any[][],
  values: any[][],
  low: any[][],
  high: any[][],
  explain?: any[][],
): any[][] {
  return whole(() => {
    const readings = datedReadings(dates, values);
    const [from, to] = [one(amount(low, anyValue, "low limit")), one(reading(high, anyValue, "high limit"))];
    const explained = flag(explain, "explain", false);
    if (readings.length === 0 || from === undefined || to === undefined) return single(undefined);
    return judged(recoveryTrend(readings, from, to), explained);
  });
}
