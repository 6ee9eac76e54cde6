import {
  ec25, inTime, judge, leachingFraction, leachingShare, litres, phShift, ph, ratioCeiling, saltRatio, whichFirst,
} from "../src/index";
import { eachCell, judged, single, table, whole } from "./answers";
import { bandIn } from "./band";
import { amount, flag, one, reading } from "./cells";
import { inOneCell, isBlank, potReadings } from "./pot-series";

/**
 * Salt ratio: runoff EC over input EC. 1 means what goes in comes out; read a high ratio beside the leaching fraction.
 * @customfunction SALTRATIO
 * @helpurl https://localhost:3000/docs/functions.html#saltratio
 * @param runoff_ec mS/cm at 25 C of what drained, cell or range
 * @param input_ec mS/cm at 25 C of what was poured in, cell or range
 * @returns no unit
 * @remarks Both readings on one scale. A blank or 0 is "not measured" and gives a blank; above 200 mS/cm it refuses, for that is uS/cm or ppm.
 * @example =RUNOFF.SALTRATIO(2.4, 1.5) -> 1.6
 * @example =RUNOFF.SALTRATIO({3;2.1}, {1.5;1.4}) -> {2;1.5}
 * @see [ku-hershey-1991], common practice
 */
export function saltratio(runoff_ec: any[][], input_ec: any[][]): any[][] {
  return eachCell(saltRatio, reading(runoff_ec, ec25, "runoff EC"), reading(input_ec, ec25, "input EC"));
}

/**
 * pH shift: runoff pH less input pH. Below 0 the pot turns the solution more acid, above 0 less acid.
 * @customfunction PHSHIFT
 * @helpurl https://localhost:3000/docs/functions.html#phshift
 * @param runoff_ph pH of what drained, cell or range
 * @param input_ph pH of what was poured in, cell or range
 * @returns pH units
 * @remarks A blank or 0 is "not measured" and gives a blank; outside 0 to 14 it refuses.
 * @example =RUNOFF.PHSHIFT(5.4, 5.9) -> -0.5
 * @see common practice
 */
export function phshift(runoff_ph: any[][], input_ph: any[][]): any[][] {
  return eachCell(phShift, reading(runoff_ph, ph, "runoff pH"), reading(input_ph, ph, "input pH"));
}

/**
 * Leaching fraction: the share of what was poured in that drained out again.
 * @customfunction LEACHFRACTION
 * @helpurl https://localhost:3000/docs/functions.html#leachfraction
 * @param runoff_volume litres, or any unit that both volumes share, cell or range
 * @param input_volume the same unit, cell or range
 * @returns 0 to 1
 * @remarks 0 runoff beside a measured input is a fraction of 0; on desktop versions that hand a blank over as 0 a runoff left blank reads so too. More runoff than input is refused.
 * @example =RUNOFF.LEACHFRACTION(0.4, 2) -> 0.2
 * @see [rhoades-1974], [ku-hershey-1991]
 */
export function leachfraction(runoff_volume: any[][], input_volume: any[][]): any[][] {
  const poured = { ...amount(input_volume, litres, "input volume") };
  return eachCell(leachingFraction, amount(runoff_volume, litres, "runoff volume"), {
    ...poured,
    read: unlessZero(poured.read),
  });
}

/** An input volume of 0 is a row on which nothing was poured: its answers are blank. */
function unlessZero<T>(read: (cell: unknown) => T | undefined): (cell: unknown) => T | undefined {
  return (cell) => {
    const value = read(cell);
    return value === 0 ? undefined : value;
  };
}

/**
 * Ratio ceiling: the salt ratio a bed settles at if it leaches this share and the roots take no salt. A line to hold a ratio against.
 * @customfunction RATIOCEILING
 * @helpurl https://localhost:3000/docs/functions.html#ratioceiling
 * @param leaching_fraction 0 to 1, cell or range
 * @returns no unit, 1 or more
 * @remarks A reference line, never a prediction: measured pots stood at 0.71 to 1.14 of it. Blank or 0 gives a blank; above 1 it refuses.
 * @example =RUNOFF.RATIOCEILING(0.2) -> 5
 * @see [handbook-60], [ku-hershey-1991]
 */
export function ratioceiling(leaching_fraction: any[][]): any[][] {
  return eachCell(ratioCeiling, reading(leaching_fraction, leachingShare, "leaching fraction"));
}

/**
 * Verdict: in band / salt buildup / pH out of range / both / short of feed / too much water / confirm with a second reading / check the meter / cannot say. With explain the course of action too.
 * @customfunction DIAGNOSE
 * @helpurl https://localhost:3000/docs/functions.html#diagnose
 * @param input_ph pH of what was poured in, column or row, oldest first
 * @param input_ec mS/cm at 25 C of what was poured in, column or row
 * @param runoff_ph pH of what drained, column or row
 * @param runoff_ec mS/cm at 25 C of what drained, column or row
 * @param band a text such as "coir", "coir, heavy" or "peat, medium, pour-through", or four cells: pH low, pH high, EC low, EC high
 * @param [leaching_fraction] 0 to 1, where the litres are not given
 * @param [explain] TRUE adds the reasons and the course, in its order, in the cell to the right
 * @param [dates] dates of the rows, a column or row of the same length
 * @param [input_litres] L poured in, of the same length
 * @param [runoff_litres] L drained, of the same length
 * @param [notes] the log's notes, of the same length: flushes, calibrations, what the plant looks like
 * @returns words
 * @remarks The more it is given the more it weighs; given all of a log it says what the pane says. "salt buildup and pH out of range" is the word for both. Names a trouble on two readings that agree, on one alone only for a sample taken on purpose or a plant that shows it. Rows without runoff readings are no evidence. All rows are of one pot: WHICHFIRST judges several.
 * @example =RUNOFF.DIAGNOSE({5.9;5.9}, {2;2}, {6;6.1}, {2.8;3}, "coir") -> in band
 * @example =RUNOFF.DIAGNOSE({5.9;5.9}, {2;2}, {6;6.1}, {4.6;4.9}, "coir") -> salt buildup
 * @example =RUNOFF.DIAGNOSE({5.9;5.9}, {2;2}, {6;6.1}, {3;4.9}, "coir") -> confirm with a second reading
 * @see [ku-hershey-1991]
 * @see [usgs-nfm]
 * @see common practice
 */
export function diagnose(
  input_ph: any[][],
  input_ec: any[][],
  runoff_ph: any[][],
  runoff_ec: any[][],
  band: any[][],
  leaching_fraction?: any[][],
  explain?: any[][],
  dates?: any[][],
  input_litres?: any[][],
  runoff_litres?: any[][],
  notes?: any[][],
): any[][] {
  return whole(() => {
    const limits = bandIn(band);
    const series = {
      inputPh: input_ph,
      inputEc: input_ec,
      runoffPh: runoff_ph,
      runoffEc: runoff_ec,
      dates,
      inputLitres: input_litres,
      runoffLitres: runoff_litres,
      notes,
    };
    const readings = potReadings(series);
    const leachingFraction = one(reading(leaching_fraction, leachingShare, "leaching fraction"));
    const explained = flag(explain, "explain", false);
    if (limits === undefined || readings.every(isBlank)) return single(undefined);
    const ordered = inTime(readings);
    return judged(inOneCell(judge(ordered, limits, { leachingFraction }), ordered), explained);
  });
}

/**
 * Which pot first: every pot of the log judged by itself, the worst first.
 * @customfunction WHICHFIRST
 * @helpurl https://localhost:3000/docs/functions.html#whichfirst
 * @param vessels names of the pots, column or row
 * @param dates dates of the rows, of the same length
 * @param input_ph pH of what was poured in, of the same length
 * @param input_ec mS/cm at 25 C of what was poured in, of the same length
 * @param runoff_ph pH of what drained, of the same length
 * @param runoff_ec mS/cm at 25 C of what drained, of the same length
 * @param band a text such as "coir", "coir, heavy" or "peat, medium, pour-through", or four cells: pH low, pH high, EC low, EC high
 * @param [input_litres] L poured in, of the same length
 * @param [runoff_litres] L drained, of the same length
 * @param [notes] the log's notes, of the same length
 * @returns table with a header row: pot, verdict, urgency, first thing to do, last reading
 * @remarks Rows without a pot's name are left out, and rows without a date in a log that has dates. Urgency is none, watch, next watering, today or now. The last reading is a date of the sheet: give its column a date format.
 * @example =RUNOFF.WHICHFIRST({"A";"B";"A";"B"}, {46023;46023;46026;46026}, {5.9;5.9;5.9;5.9}, {2;2;2;2}, {6;6;6;6}, {2.8;4.6;3;5.9}, "coir") -> {"pot","verdict","urgency","first thing to do","last reading";"B","salt buildup","today","flush",46026;"A","in band","none","carry on",46026}
 * @see common practice
 */
export function whichfirst(
  vessels: any[][],
  dates: any[][],
  input_ph: any[][],
  input_ec: any[][],
  runoff_ph: any[][],
  runoff_ec: any[][],
  band: any[][],
  input_litres?: any[][],
  runoff_litres?: any[][],
  notes?: any[][],
): any[][] {
  return whole(() => {
    const limits = bandIn(band);
    const series = {
      vessels,
      inputPh: input_ph,
      inputEc: input_ec,
      runoffPh: runoff_ph,
      runoffEc: runoff_ec,
      dates,
      inputLitres: input_litres,
      runoffLitres: runoff_litres,
      notes,
    };
    const readings = potReadings(series).filter(({ vessel }) => vessel !== undefined);
    if (limits === undefined || readings.length === 0) return single(undefined);
    const pots = whichFirst(readings, limits).map(({ vessel, judgement: { verdict, urgency, course }, lastDay }) => [
      vessel,
      verdict,
      urgency,
      course[0].act,
      lastDay,
    ]);
    return table([["pot", "verdict", "urgency", "first thing to do", "last reading"], ...pots]);
  });
}
