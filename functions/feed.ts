import * as engine from "../src/index";
import { eachCell, judged, single, whole } from "./answers";
import { amount, choice, flag, one, reading } from "./cells";
import { waterEc } from "./water";

/**
 * ppm of an element that a fertiliser gives at so many grams per litre. Labels state oxides: 20 % P2O5 is 8.7 % P.
 * @customfunction LABELPPM
 * @helpurl https://localhost:3000/docs/functions.html#labelppm
 * @param grams_per_litre g of fertiliser in a litre of feed, cell or range
 * @param percent % by weight on the label, cell or range
 * @param analyte what it counts: N, P, K, Ca, Mg, S, Fe, Mn, Zn, Cu, B, Mo, Si, Cl, Na, P2O5, K2O, CaO, MgO, SO3, SO4, NO3, NH4 or SiO2
 * @returns ppm of the element
 * @remarks "Nitrate nitrogen" on a label is counted as N, not as NO3. Refuses an unknown analyte with the list. A 0 counts as blank.
 * @example =RUNOFF.LABELPPM(1, 20, "P2O5") -> 87.3
 * @example =RUNOFF.LABELPPM(1, 15.5, "N") -> 155
 * @see [iupac-weights-2021] [extension-label-arithmetic]
 */
export function labelppm(grams_per_litre: any[][], percent: any[][], analyte: any[][]): any[][] {
  return eachCell(
    engine.labelPpm,
    reading(grams_per_litre, engine.gramsPerLitre, "fertiliser per litre"),
    reading(percent, engine.labelPercent, "label analysis"),
    choice(analyte, "analyte", engine.analyteNamed),
  );
}

/**
 * Grams of a fertiliser that give a tank so many ppm of an element. What the water already holds is not taken off.
 * @customfunction FEEDGRAMS
 * @helpurl https://localhost:3000/docs/functions.html#feedgrams
 * @param litres L of feed, cell or range
 * @param ppm_target ppm of the element wanted, cell or range
 * @param percent % by weight on the label, cell or range
 * @param analyte what it counts: N, P, K, Ca, Mg, S, Fe, Mn, Zn, Cu, B, Mo, Si, Cl, Na, P2O5, K2O, CaO, MgO, SO3, SO4, NO3, NH4 or SiO2
 * @returns g
 * @remarks The inverse of LABELPPM. Refuses a share typed for a percentage (0.2 for 20). The answer is for the element: 200 ppm P from P2O5, not 200 ppm P2O5. Handle as the label says.
 * @example =RUNOFF.FEEDGRAMS(100, 200, 20, "N") -> 100
 * @see [iupac-weights-2021] [extension-label-arithmetic]
 */
export function feedgrams(litres: any[][], ppm_target: any[][], percent: any[][], analyte: any[][]): any[][] {
  return eachCell(
    (volume: engine.Litres, target: engine.Ppm, percent: engine.Percent, analyteOnLabel: engine.Analyte) =>
      engine.feedGrams(volume, target, { percent, analyte: analyteOnLabel }),
    reading(litres, engine.litres, "tank volume"),
    reading(ppm_target, engine.ppm, "target ppm"),
    reading(percent, engine.labelPercent, "label analysis"),
    choice(analyte, "analyte", engine.analyteNamed),
  );
}

/**
 * Balance of potassium, calcium and magnesium in a feed: balanced, or such as K high against Ca; K high against Mg.
 * @customfunction CATIONS
 * @helpurl https://localhost:3000/docs/functions.html#cations
 * @param k_ppm ppm of K in the feed
 * @param ca_ppm ppm of Ca, the water's own included
 * @param mg_ppm ppm of Mg, the water's own included
 * @param [explain] TRUE adds the ratios and their limits in the cell to the right
 * @returns balanced, or the pairs out of balance joined by "; ": K high against Ca, K high against Mg, Ca high against Mg, Ca high against K, Mg high against K, Mg high against Ca
 * @remarks Limits: K/Ca 0.75 to 2.5, K/Mg 2 to 7, Ca/Mg 2 to 5, by weight. Ppm of the elements, not of oxides. It judges ratios, not amounts.
 * @example =RUNOFF.CATIONS(200, 100, 50) -> balanced
 * @example =RUNOFF.CATIONS(400, 100, 40) -> K high against Ca; K high against Mg
 * @see [producegrower-cations] [producegrower-hardness] [warncke-sme]; K/Mg above 5 common practice
 */
export function cations(k_ppm: any[][], ca_ppm: any[][], mg_ppm: any[][], explain?: any[][]): any[][] {
  return whole(() => {
    const k = one(reading(k_ppm, engine.ppm, "K"));
    const ca = one(reading(ca_ppm, engine.ppm, "Ca"));
    const mg = one(reading(mg_ppm, engine.ppm, "Mg"));
    const explained = flag(explain, "explain", false);
    if (k === undefined || ca === undefined || mg === undefined) return single(undefined);
    return judged(engine.cations(k, ca, mg), explained);
  });
}

/**
 * EC to feed on a day after a flush: a weak start, in a straight line to the full feed, never above it.
 * @customfunction RECOVERYFEED
 * @helpurl https://localhost:3000/docs/functions.html#recoveryfeed
 * @param full_ec mS/cm of the full feed
 * @param water_ec mS/cm of the water (0 for pure water), below which no feed can be
 * @param days_since_flush days, 0 on the day of the flush, cell or range
 * @param [start_share] part of what the full feed adds to the water on day 0, above 0 to 1, 0.5 if left out
 * @param [days_to_full] days until the full feed, 7 if left out
 * @returns mS/cm
 * @remarks Refuses a day before the flush and a full feed below its water; a blank day reads as the day of the flush on desktop versions that hand a blank over as 0. Hold the day back while the runoff is still out of band.
 * @example =RUNOFF.RECOVERYFEED(2, 0.4, {0;7;10}) -> {1.2;2;2}
 * @see common practice
 */
export function recoveryfeed(
  full_ec: any[][], water_ec: any[][], days_since_flush: any[][], start_share?: any[][], days_to_full?: any[][],
): any[][] {
  return eachCell(
    (full: engine.Ec25, water: engine.Ec25, day: engine.Days, startShare: engine.Share, daysToFull: engine.Days) =>
      engine.recoveryFeed({ full, water }, day, { startShare, daysToFull }),
    reading(full_ec, engine.ec25, "full feed EC"),
    waterEc(water_ec),
    amount(days_since_flush, engine.days, "days since the flush"),
    amount(start_share, engine.leachingShare, "start share", engine.usualRamp.startShare),
    amount(days_to_full, engine.days, "days to full feed", engine.usualRamp.daysToFull),
  );
}
