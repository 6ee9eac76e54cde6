import * as engine from "../src/index";
import { eachCell, single, whole } from "./answers";
import { amount, type Argument, type Cells, reading, series } from "./cells";
import { waterEc } from "./water";

const ec = (cells: Cells | null | undefined, called: string): Argument<engine.Ec25> =>
  reading(cells, engine.ec25, called);

/** A tank of 0 L has nothing to mix, so a 0 here is a blank cell. */
const tank = (cells: Cells | null | undefined): Argument<engine.Litres> => reading(cells, engine.litres, "tank volume");

/**
 * Litres of water to add to bring a tank down to a target EC. Measure the mix afterwards: it reads slightly above the target.
 * @customfunction DILUTION
 * @helpurl https://localhost:3000/docs/functions.html#dilution
 * @param litres L in the tank now, cell or range
 * @param ec_now mS/cm in the tank now, cell or range
 * @param ec_target mS/cm wanted, cell or range
 * @param water_ec mS/cm of the water to add (0 for pure water), cell or range
 * @returns L of water to add
 * @remarks Refuses a target above what is there, or not above the water's own EC. The EC now and the target: 0 counts as not measured.
 * @example =RUNOFF.DILUTION(10, 3, 1.8, 0.3) -> 8
 * @see mass balance; [pratt2001] for the error of a straight line
 */
export function dilution(litres: any[][], ec_now: any[][], ec_target: any[][], water_ec: any[][]): any[][] {
  return eachCell(
    (volume: engine.Litres, now: engine.Ec25, target: engine.Ec25, water: engine.Ec25) =>
      engine.dilution({ litres: volume, ec: now }, target, water),
    tank(litres),
    ec(ec_now, "EC now"),
    ec(ec_target, "target EC"),
    waterEc(water_ec),
  );
}

/**
 * Litres to drain from a full tank and replace with water, to bring it down to a target EC. Measure the mix afterwards.
 * @customfunction SWAPOUT
 * @helpurl https://localhost:3000/docs/functions.html#swapout
 * @param litres L in the tank, cell or range
 * @param ec_now mS/cm in the tank now, cell or range
 * @param ec_target mS/cm wanted, cell or range
 * @param water_ec mS/cm of the water (0 for pure water), cell or range
 * @returns L to drain and replace
 * @remarks Refuses as DILUTION does. What is drained is a fertiliser solution: use it on other plants or follow local rules for drain water.
 * @example =RUNOFF.SWAPOUT(10, 3, 1.8, 0.6) -> 5
 * @see mass balance; [pratt2001] for the error of a straight line
 */
export function swapout(litres: any[][], ec_now: any[][], ec_target: any[][], water_ec: any[][]): any[][] {
  return eachCell(
    (volume: engine.Litres, now: engine.Ec25, target: engine.Ec25, water: engine.Ec25) =>
      engine.swapOut({ litres: volume, ec: now }, target, water),
    tank(litres),
    ec(ec_now, "EC now"),
    ec(ec_target, "target EC"),
    waterEc(water_ec),
  );
}

/**
 * Millilitres of a concentrate to bring a tank of water up to a target EC. Add most of it, measure, then finish.
 * @customfunction STOCKDOSE
 * @helpurl https://localhost:3000/docs/functions.html#stockdose
 * @param litres L of water, cell or range
 * @param ec_target mS/cm wanted, cell or range
 * @param water_ec mS/cm of the water (0 for pure water), cell or range
 * @param ec_per_ml_per_l mS/cm that 1 mL of the concentrate adds to 1 L, cell or range
 * @returns mL
 * @remarks Refuses a target below the water's own EC, and more than 250 mL in a litre. Never pour one concentrate into another; handle them as their labels say.
 * @example =RUNOFF.STOCKDOSE(20, 1.6, 0.4, 0.3) -> 80
 * @see [unh-fertilizer]
 */
export function stockdose(litres: any[][], ec_target: any[][], water_ec: any[][], ec_per_ml_per_l: any[][]): any[][] {
  return eachCell(
    (volume: engine.Litres, target: engine.Ec25, water: engine.Ec25, strength: engine.StockStrength) =>
      engine.stockDose({ litres: volume, ec: water }, target, strength),
    tank(litres),
    ec(ec_target, "target EC"),
    waterEc(water_ec),
    reading(ec_per_ml_per_l, engine.stockStrength, "EC per mL of stock per L"),
  );
}

/**
 * EC of waters and feeds poured together. Measure the mix: a strong feed thinned with water reads a little higher than this.
 * @customfunction BLENDEC
 * @helpurl https://localhost:3000/docs/functions.html#blendec
 * @param litres L of each part, series
 * @param ecs mS/cm of each part, 0 for pure water, series in the same order
 * @returns mS/cm
 * @remarks A part with its EC or its litres left blank is refused; leave both empty to skip it. A blank EC that a desktop version hands over as 0 reads as pure water.
 * @example =RUNOFF.BLENDEC({38;12}, {2.5;0.4}) -> 1.996
 * @see mass balance; [pratt2001] for the error of a straight line
 */
export function blendec(litres: any[][], ecs: any[][]): any[][] {
  return whole(() => {
    const volumes = series(amount(litres, engine.litres, "litres"));
    const readings = series(waterEc(ecs, "EC"));
    if (volumes.length !== readings.length) {
      const quantity = `${volumes.length} volumes beside ${readings.length} ECs`;
      throw new engine.Refusal("impossible", { quantity, allowed: "one EC for each volume" });
    }
    const parts = volumes.flatMap((volume, index) => blendPart(volume, readings[index], index + 1));
    return single(parts.length === 0 ? undefined : engine.blendEc(parts));
  });
}

/** A part of 0 L with no EC is a row not filled in; a volume of 0 beside an EC is a volume not measured. */
function blendPart(
  volume: engine.Litres | undefined,
  reading: engine.Ec25 | undefined,
  part: number,
): engine.BlendPart[] {
  const poured = volume === 0 ? undefined : volume;
  if (poured !== undefined && reading !== undefined) return [{ litres: poured, ec: reading }];
  if (poured === undefined && (reading ?? 0) === 0) return [];
  throw new engine.Refusal("missing", { quantity: `${poured === undefined ? "volume" : "EC"} of part ${part}` });
}

/**
 * Share of A in a blend of A and B that has the target EC, 0 to 1.
 * @customfunction BLENDSHARE
 * @helpurl https://localhost:3000/docs/functions.html#blendshare
 * @param ec_a mS/cm of A (0 for pure water), cell or range
 * @param ec_b mS/cm of B (0 for pure water), cell or range
 * @param ec_target mS/cm wanted, cell or range
 * @returns share of A, 0 to 1
 * @remarks Refuses a target that is not between the two, and two waters that the meter cannot tell apart.
 * @example =RUNOFF.BLENDSHARE(2.4, 0.4, 1.4) -> 0.5
 * @see mass balance; [pratt2001] for the error of a straight line
 */
export function blendshare(ec_a: any[][], ec_b: any[][], ec_target: any[][]): any[][] {
  return eachCell(engine.blendShare, waterEc(ec_a, "EC of A"), waterEc(ec_b, "EC of B"), ec(ec_target, "target EC"));
}
