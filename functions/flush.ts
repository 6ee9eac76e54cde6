import { type FlushReading, flushStop, type Litres, litres, Refusal } from "../src/index";
import { judged, single, whole } from "./answers";
import { bandIn } from "./band";
import { amount, type Cells, flag, one, reading, series } from "./cells";

/**
 * Flush stop check: keep going / pause and measure again / stop: in band / stop: no longer falling / stop: enough water / cannot say. One row a reading, in order; litres are of each portion, not running totals.
 * @customfunction FLUSHSTOP
 * @helpurl https://localhost:3000/docs/functions.html#flushstop
 * @param runoff_ph pH of the runoff, column or row in order
 * @param runoff_ec mS/cm at 25 C of the runoff, column or row in order
 * @param band medium, or "medium, feeder", or four cells: pH low, pH high, EC low, EC high
 * @param [litres_poured] L of each portion poured before its reading, column or row; empty before the flush and after a pause
 * @param [container_litres] L, volume of the pot; without it the water limit is not checked
 * @param [explain] TRUE adds the reasons in the cell to the right
 * @returns words
 * @remarks Says "cannot say" when the last runoff pH or EC is missing, impossible or hard to believe. Rows below the last filled one are left out. Stops at 3 container capacities (soil 2) or 2 pot volumes. Keep drain water off floors with electrical gear.
 * @example =RUNOFF.FLUSHSTOP({6;6;6}, {6;4.5;3.1}, "coir") -> stop: in band
 * @example =RUNOFF.FLUSHSTOP({6;6;6}, {6;5.2;4.4}, "coir", {0;2;2}, 10) -> keep going
 * @example =RUNOFF.FLUSHSTOP({6;6;6}, {4.1;4.1;4.1}, "coir") -> stop: no longer falling
 * @see common practice
 * @see [kerr-1983]
 */
export function flushstop(
  runoff_ph: any[][],
  runoff_ec: any[][],
  band: any[][],
  litres_poured?: any[][],
  container_litres?: any[][],
  explain?: any[][],
): any[][] {
  return whole(() => {
    const limits = bandIn(band);
    if (limits === undefined) return single(undefined);
    const readings = flushReadings(runoff_ph, runoff_ec, litres_poured);
    const pot = one(reading(container_litres, litres, "container volume"));
    return judged(flushStop(readings, limits, pot), flag(explain, "explain", false));
  });
}

/** The rows of a flush. Readings come as they stand, because the stop check itself says which cannot be believed. */
function flushReadings(runoffPh: Cells | undefined, runoffEc: Cells, litresPoured: Cells | undefined): FlushReading[] {
  const asWritten = (value: number): number => value;
  const ecs = series(reading(runoffEc, asWritten, "runoff EC"));
  const phs = besides(ecs, runoffPh, series(reading(runoffPh, asWritten, "runoff pH")), "runoff pH");
  const portions = besides(ecs, litresPoured, series<Litres>(amount(litresPoured, litres, "litres poured")), "litres poured");
  return ecs.map((ec, row) => ({ ph: phs[row], ec, litres: portions[row] }));
}

/** A series that must be as long as the EC readings, unless it was left out. */
function besides<T>(ecs: readonly unknown[], cells: Cells | null | undefined, values: T[], called: string): T[] {
  if (cells === null || cells === undefined || values.length === ecs.length) return values;
  throw new Refusal("impossible", {
    quantity: `${called} of ${values.length} beside runoff EC of ${ecs.length} cells`,
    allowed: "of the same length",
  });
}
