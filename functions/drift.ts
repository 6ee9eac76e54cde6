import {
  drift as driftOf,
  driftAlarm,
  driftLeft,
  ec25,
  type Ec25,
  litres,
  type Litres,
  ppmScale,
  type PpmScale,
  Refusal,
  saltKept,
  saltScale,
  type SaltySolution,
} from "../src/index";
import { eachCell, judged, single, whole } from "./answers";
import { amount, flag, ifTaken, one, reading, series } from "./cells";
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
 * @remarks A runoff of 0 L keeps all the salt and needs no runoff EC; on desktop versions that hand a blank over as 0 a runoff left blank reads so too. What the roots took up counts as kept. Refuses more runoff than input, and a runoff EC beside 0 L.
 * @example =RUNOFF.SALTKEPT(2, 10, 4, 2) -> 7.68
 * @example =RUNOFF.SALTKEPT(0.3, 10, 4, 8) -> -18.56
 * @example =RUNOFF.SALTKEPT(2, 10, "", 0) -> 12.8
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
    (inputEc: Ec25, inputLitres: Litres, runoffEc: Ec25 | null, runoffLitres: Litres, ppm: PpmScale) => {
      const drained = drainedSolution(runoffEc, runoffLitres);
      return drained === undefined ? undefined : saltKept({ ec: inputEc, litres: inputLitres }, drained, ppm);
    },
    reading(input_ec, ec25, "input EC"),
    reading(input_litres, litres, "input volume"),
    ifTaken(reading(runoff_ec, ec25, "runoff EC")),
    amount(runoff_litres, litres, "runoff volume"),
    reading(scale, ppmScale, "ppm scale", saltScale),
  );
}

/** What drained: nothing where the volume is 0, which then has no EC; `undefined` when the EC was not measured. */
function drainedSolution(ec: Ec25 | null, volume: Litres): SaltySolution | undefined {
  if (volume > 0) return ec === null ? undefined : { ec, litres: volume };
  if (ec === null) return { ec: ec25(0), litres: volume };
  throw new Refusal("missing", {
    quantity: "runoff volume",
    next: "0 L beside a runoff EC: fill in the litres that drained",
  });
}

/**
 * Drift: by how much a reading changes a day. The median of all pairs of readings, so that one mistyped value does not turn it.
 * @customfunction DRIFT
 * @helpurl https://localhost:3000/docs/functions.html#drift
 * @param dates dates of the sheet, or day numbers from 0, column or row, in any order
 * @param values readings, column or row beside them
 * @returns the readings' unit a day
 * @remarks A row without its date or its reading is passed over; a reading of 0 is "not measured", and so is a day of 0 among dates. Dates typed as text are refused; fewer than two different dates give #N/A.
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
 * @param dates dates of the sheet, or day numbers from 0, column or row, in any order
 * @param values readings, column or row beside them
 * @param low lower limit, in the readings' unit
 * @param high upper limit, in the readings' unit
 * @returns days, 0 where it already stands outside
 * @remarks Needs 5 readings or more: with fewer no drift is told from chance at 5 % (Mann-Kendall, two-sided). A high limit of 0 counts as blank. A straight line goes on; a pot may not.
 * @example =RUNOFF.DRIFTLEFT({46023;46024;46025;46026;46027}, {2;2.2;2.4;2.6;2.8}, 2, 3.5) -> 3.5
 * @example =RUNOFF.DRIFTLEFT({46023;46024;46025;46026;46027}, {2.4;2.2;2.5;2.3;2.4}, 2, 3.5) -> ""
 * @see [mann-1945]
 * @see [sen-1968]
 */
export function driftleft(dates: any[][], values: any[][], low: any[][], high: any[][]): any[][] {
  return whole(() => {
    const readings = datedReadings(dates, values);
    const [from, to] = [one(amount(low, anyValue, "low limit")), one(reading(high, anyValue, "high limit"))];
    if (readings.length === 0 || from === undefined || to === undefined) return single(undefined);
    return single(driftLeft(readings, from, to));
  });
}

/**
 * Drift alarm: steady / drifting up / drifting down / cannot say. Adds up small steps away from the first readings (CUSUM).
 * @customfunction DRIFTALARM
 * @helpurl https://localhost:3000/docs/functions.html#driftalarm
 * @param values pH, or EC in one unit, column or row, oldest first
 * @param [baseline_count] how many of the first readings are the baseline, 5 if left out
 * @param [explain] TRUE adds the reasons in the cell to the right
 * @returns words
 * @remarks Rings when the sum passes 5 scatters of the baseline, counted as at least what the meter can be off (2 %); one odd reading adds at most 3.5 of them. Of 100 steady logs 39 ring falsely within 20 more readings with a baseline of 5, 24 with 10, 13 with 20: measure before you act. Blanks are passed over.
 * @example =RUNOFF.DRIFTALARM({6;6.02;5.98;6.01;5.99;6;6.02}) -> steady
 * @example =RUNOFF.DRIFTALARM({6;6.02;5.98;6.01;5.99;6.3;6.35;6.4}) -> drifting up
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
