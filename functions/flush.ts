import {
  ec25,
  type Ec25,
  flushLeft,
  flushPlan,
  flushStop,
  flushVolume,
  type FlushVolume,
  leachNeed,
  type Litres,
  litres,
  type Medium,
  mediumNamed,
  standardPortionShare,
} from "../src/index";
import { type Answer, eachCell, judged, single, whole } from "./answers";
import { bandIn } from "./band";
import { type Cells, choice, flag, one, reading } from "./cells";
import { besideEach, flushReadings, leftCells, planCells, portionShare } from "./flush-cells";
import { waterEc } from "./water";

/**
 * Litres of water expected to bring a wet pot's runoff down to the target EC, never above the over-flush limit. A first guess by medium: FLUSHLEFT replaces it by your own readings.
 * @customfunction FLUSHVOLUME
 * @helpurl https://localhost:3000/docs/functions.html#flushvolume
 * @param container_litres L, volume of the pot
 * @param runoff_ec mS/cm at 25 C of the runoff now
 * @param target_ec mS/cm at 25 C wanted
 * @param water_ec mS/cm at 25 C of the water poured, 0 for pure water
 * @param medium coir, peat, bark, mineral wool, inert or soil; water culture is refused, a tank is changed and not flushed
 * @param [explain] TRUE adds the EC that these litres reach, and what the target would need, in the cell to the right
 * @returns L
 * @remarks 0 when the runoff is at the target. Ends at 3 container capacities (soil 2) or 2 pot volumes. Refuses a target at or below the water's own EC. A dry pot first swallows what it lacks.
 * @example =RUNOFF.FLUSHVOLUME(10, 6, 3, 0.4, "coir") -> 7.12
 * @example =RUNOFF.FLUSHVOLUME(10, 9, 1, 0.4, "soil") -> 7
 * @see [kerr-1983] for its limits; the table of media is a judgement, common practice
 */
export function flushvolume(
  container_litres: any[][],
  runoff_ec: any[][],
  target_ec: any[][],
  water_ec: any[][],
  medium: any[][],
  explain?: any[][],
): any[][] {
  const each = (say: (volume: FlushVolume) => Answer): Cells =>
    eachCell(
      (containerLitres: Litres, runoff: Ec25, target: Ec25, water: Ec25, name: Medium) =>
        say(flushVolume(runoff, target, { containerLitres, waterEc: water, medium: name })),
      reading(container_litres, litres, "container volume"),
      reading(runoff_ec, ec25, "runoff EC"),
      reading(target_ec, ec25, "target EC"),
      waterEc(water_ec),
      choice(medium, "medium", mediumNamed),
    );
  return whole(() => {
    const volumes = each((volume) => volume.litres);
    return flag(explain, "explain", false)
      ? besideEach(
          volumes,
          each(({ reasons }) => reasons.join("; ")),
        )
      : volumes;
  });
}

/**
 * A flush in equal portions with the runoff EC expected after each, for a pot already wet through. Let it drip and measure after every portion: FLUSHSTOP says when to stop.
 * @customfunction FLUSHPLAN
 * @helpurl https://localhost:3000/docs/functions.html#flushplan
 * @param container_litres L, volume of the pot
 * @param runoff_ec mS/cm at 25 C of the runoff now
 * @param target_ec mS/cm at 25 C wanted
 * @param water_ec mS/cm at 25 C of the water poured, 0 for pure water
 * @param medium coir, peat, bark, mineral wool, inert or soil; water culture is refused, a tank is changed and not flushed
 * @param [portion_share] largest portion as a share of what the pot holds, 0.05 to 1; 0.25 if left out
 * @returns table with a header row: portion, litres, litres so far, expected runoff EC
 * @remarks Ends at 3 container capacities (soil 2) or 2 pot volumes and says so in a closing row. Refuses a target at or below the water's own EC.
 * @example =RUNOFF.FLUSHPLAN(10, 4, 3, 0.4, "coir", 0.5) -> {"portion","litres","litres so far","expected runoff EC";1,3.02,3.02,3}
 * @see [kerr-1983] for its limits; the table of media is a judgement, common practice
 */
export function flushplan(
  container_litres: any[][],
  runoff_ec: any[][],
  target_ec: any[][],
  water_ec: any[][],
  medium: any[][],
  portion_share?: any[][],
): any[][] {
  return whole(() => {
    const containerLitres = one(reading(container_litres, litres, "container volume"));
    const runoff = one(reading(runoff_ec, ec25, "runoff EC"));
    const target = one(reading(target_ec, ec25, "target EC"));
    const water = one(waterEc(water_ec));
    const name = one(choice(medium, "medium", mediumNamed));
    const share =
      one(reading(portion_share, portionShare, "portion share", standardPortionShare)) ?? standardPortionShare;
    if (containerLitres === undefined || runoff === undefined || target === undefined) return single(undefined);
    if (water === undefined || name === undefined) return single(undefined);
    return planCells(flushPlan(runoff, target, { containerLitres, waterEc: water, medium: name, portionShare: share }));
  });
}

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
 * @remarks Says "cannot say" when the last runoff pH or EC is missing, impossible or hard to believe, and when the litres look like running totals or mL. Rows below the last filled one are left out. Stops at 3 container capacities (soil 2) or 2 pot volumes. Keep drain water away from electrical gear.
 * @example =RUNOFF.FLUSHSTOP({6;6;6}, {6;4.5;3.1}, "coir") -> stop: in band
 * @example =RUNOFF.FLUSHSTOP({6;6;6}, {6;5.2;4.4}, "coir", {0;2;2}, 10) -> keep going
 * @example =RUNOFF.FLUSHSTOP({6;6;6}, {4.1;4.1;4.1}, "coir") -> stop: no longer falling
 * @see common practice; [kerr-1983] for the flattening
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
    const readings = flushReadings(runoff_ec, { runoffPh: runoff_ph, litresPoured: litres_poured });
    const pot = one(reading(container_litres, litres, "container volume"));
    return judged(flushStop(readings, limits, pot), flag(explain, "explain", false));
  });
}

/**
 * Litres still needed, from the washout fitted to this pot's own flush readings; "cannot say" below three readings or when the runoff EC no longer falls. Litres are of each portion, not running totals.
 * @customfunction FLUSHLEFT
 * @helpurl https://localhost:3000/docs/functions.html#flushleft
 * @param litres_poured L of each portion poured before its reading, column or row in order
 * @param runoff_ec mS/cm at 25 C of the runoff, column or row in order
 * @param target_ec mS/cm at 25 C wanted
 * @param water_ec mS/cm at 25 C of the water poured, 0 for pure water
 * @param [explain] TRUE adds the reasons in the cell to the right
 * @returns L, or "cannot say"
 * @remarks 0 when the last reading is at the target. Refuses a target at or below the water's own EC.
 * @example =RUNOFF.FLUSHLEFT({0;2;2;2}, {6;4.1;4.1;4.1}, 3, 0.4) -> cannot say
 * @example =RUNOFF.FLUSHLEFT({0;2;2}, {8.4;4.4;2.4}, 1.4, 0.4) -> 2
 * @see the model of FLUSHVOLUME; the fit is a weighted least squares line
 */
export function flushleft(
  litres_poured: any[][],
  runoff_ec: any[][],
  target_ec: any[][],
  water_ec: any[][],
  explain?: any[][],
): any[][] {
  return whole(() => {
    const readings = flushReadings(runoff_ec, { litresPoured: litres_poured });
    const target = one(reading(target_ec, ec25, "target EC"));
    const water = one(waterEc(water_ec));
    if (target === undefined || water === undefined) return single(undefined);
    return leftCells(flushLeft(readings, target, water), flag(explain, "explain", false));
  });
}

/**
 * Leaching requirement: the share of each irrigation that must drain so that salt does not build up past what the crop tolerates.
 * @customfunction LEACHNEED
 * @helpurl https://localhost:3000/docs/functions.html#leachneed
 * @param input_ec mS/cm at 25 C of what is poured in, 0 for pure water, cell or range
 * @param tolerated_ece mS/cm at 25 C of the saturation extract that the crop tolerates, cell or range; not a runoff EC
 * @returns 0 to 1
 * @remarks Refuses where no share below 1 is enough. Made for field soil: in pots take it as a floor.
 * @example =RUNOFF.LEACHNEED(1, 2.5) -> 0.087
 * @see [rhoades-1974]
 */
export function leachneed(input_ec: any[][], tolerated_ece: any[][]): any[][] {
  return eachCell(leachNeed, waterEc(input_ec, "input EC"), reading(tolerated_ece, ec25, "tolerated ECe"));
}
