import {
  drift as driftOf, driftAlarm, driftLeft, ec25, litres, ppmScale, saltKept, saltScale,
} from "../src/index";
import { eachCell, judged, single, whole } from "./answers";
import { flag, one, reading, series } from "./cells";
import { anyValue, datedReadings } from "./dated";

/**
 * Salt kept: grams of salt that this irrigation left behind in the pot; negative where more was washed out than came in.
 * @customfunction SALTKEPT
 * @helpurl https://localhost:3000/docs/functions.html#saltkept
 * @param input_ec mS/cm at 25 C of what was poured in, cell or range
 * @param input_litres L poured in, cell or range
 * @param runoff_ec mS/cm at 25 C of what drained, cell or range
 * @param runoff_litres L drained, cell or range
 * @param [scale] mg/L per mS/cm, 640 if left out
 * @returns g
 * @remarks Blank unless all four are measured: a runoff of 0 L cannot be told from a blank cell, so an irrigation without runoff, which keeps all its salt, is blank too. What the roots took up counts as kept. More runoff than input is refused.
 * @example =RUNOFF.SALTKEPT(2, 10, 4, 2) -> 7.68
 * @example =RUNOFF.SALTKEPT(0.3, 10, 4, 8) -> -18.56
 * @see [handbook-60]
 */
export function saltkept(
  input_ec: any[][],
  input_litres: any[][],
  runoff_ec: any[][],
  runoff_litres: any[][],
  scale?: any[][],
): any[][] {
  return eachCell(
    (inputEc, inputLitres, runoffEc, runoffLitres, ppm) =>
      saltKept({ ec: inputEc, litres: inputLitres }, { ec: runoffEc, litres: runoffLitres }, ppm),
    reading(input_ec, ec25, "input EC"),
    reading(input_litres, litres, "input volume"),
    reading(runoff_ec, ec25, "runoff EC"),
    reading(runoff_litres, litres, "runoff volume"),
    reading(scale, ppmScale, "ppm scale", saltScale),
  );
}

/**
 * Drift: by how much a reading changes a day. The median of all pairs of readings, so that one mistyped value does not turn it.
 * @customfunction DRIFT
 * @helpurl https://localhost:3000/docs/functions.html#drift
 * @param dates dates of the sheet, column or row, in any order
 * @param values readings, column or row beside them
 * @returns the readings' unit a day
 * @remarks A row without its date or its reading is passed over; 0 is "not measured". Dates typed as text are refused; fewer than two different dates give #N/A.
 * @example =RUNOFF.DRIFT({46023;46025;46027}, {2;2.4;2.8}) -> 0.2
 * @see [sen-1968]
 */
export function drift(dates: any[][], values: any[][]): any[][] {
  return whole(() => {
    const readings = datedReadings(dates, values);
    return single(readings.length === 0 ? undefined : driftOf(readings));
  });
}

/**
 * Days until the drift takes the reading out of its limits, counted from the last reading. Blank when the drift is not told from chance.
 * @customfunction DRIFTLEFT
 * @helpurl https://localhost:3000/docs/functions.html#driftleft
 * @param dates dates of the sheet, column or row, in any order
 * @param values readings, column or row beside them
 * @param low lower limit, in the readings' unit
 * @param high upper limit, in the readings' unit
 * @returns days, 0 where it already stands outside
 * @remarks Needs 5 readings or more: with fewer no drift is told from chance at 5 % (Mann-Kendall, two-sided). A limit of 0 counts as blank. A straight line goes on; a pot may not.
 * @example =RUNOFF.DRIFTLEFT({46023;46024;46025;46026;46027}, {2;2.2;2.4;2.6;2.8}, 2, 3.5) -> 3.5
 * @example =RUNOFF.DRIFTLEFT({46023;46024;46025;46026;46027}, {2.4;2.2;2.5;2.3;2.4}, 2, 3.5) -> ""
 * @see [mann-1945]
 * @see [sen-1968]
 */
export function driftleft(dates: any[][], values: any[][], low: any[][], high: any[][]): any[][] {
  return whole(() => {
    const readings = datedReadings(dates, values);
    const [from, to] = [one(reading(low, anyValue, "low limit")), one(reading(high, anyValue, "high limit"))];
    if (readings.length === 0 || from === undefined || to === undefined) return single(undefined);
    return single(driftLeft(readings, from, to));
  });
}

/**
 * Drift alarm: steady / drifting up / drifting down / cannot say. Adds up small steps away from the first readings (CUSUM).
 * @customfunction DRIFTALARM
 * @helpurl https://localhost:3000/docs/functions.html#driftalarm
 * @param values pH, or EC in mS/cm, column or row, oldest first
 * @param [baseline_count] how many of the first readings are the baseline, 5 if left out
 * @param [explain] TRUE adds the reasons in the cell to the right
 * @returns words
 * @remarks Rings when the sum passes 5 scatters of the baseline; one reading alone never rings it, two far off in a row do. With a baseline of 5, 28 of 100 steady logs ring falsely within 20 more readings, with 10 it is 13: measure before you act. Blanks are passed over.
 * @example =RUNOFF.DRIFTALARM({6;6.02;5.98;6.01;5.99;6;6.02}) -> steady
 * @example =RUNOFF.DRIFTALARM({6;6.02;5.98;6.01;5.99;6.1;6.12;6.15}) -> drifting up
 * @see [nist-handbook]
 * @see [montgomery-2009]
 */
export function driftalarm(values: any[][], baseline_count?: any[][], explain?: any[][]): any[][] {
  return whole(() => {
    const read = series(reading(values, anyValue, "value")).filter((value) => value !== undefined);
    const count = one(reading(baseline_count, anyValue, "baseline count"));
    const explained = flag(explain, "explain", false);
    return read.length === 0 ? single(undefined) : judged(driftAlarm(read, count), explained);
  });
}
