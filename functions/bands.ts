import { type Band, bandLimit, quantities, Refusal, rowFlags } from "../src/index";
import { type Answer, eachCell, single, whole } from "./answers";
import { bandIn } from "./band";
import { ifTaken, one, reading, word } from "./cells";
import { asGiven } from "./pot-series";

/**
 * One limit of a band: pH, the pH to pour at, or runoff EC in mS/cm at 25 C.
 * @customfunction BANDLIMIT
 * @helpurl https://localhost:3000/docs/functions.html#bandlimit
 * @param band a text such as "coir", "coir, heavy" or "peat, medium, pour-through", or four cells: pH low, pH high, EC low, EC high
 * @param limit "ph low", "ph high", "ph aim", "ec low" or "ec high"
 * @returns pH or mS/cm
 * @remarks Media: coir, peat, bark, mineral wool, inert, soil, water culture. Feeders: light, medium (default), heavy. Samples: drain (default), pour-through, 1:2 extract, saturated extract. Another word is refused with the list.
 * @example =RUNOFF.BANDLIMIT("coir", "ec high") -> 3.5
 * @example =RUNOFF.BANDLIMIT("peat, medium, saturated extract", "ec high") -> 3.5
 * @example =RUNOFF.BANDLIMIT({5.6,6.4,1.5,3}, "ph low") -> 5.6
 * @see [the band table](sources.md#the-band-table)
 */
export function bandlimit(band: any[][], limit: any[][]): any[][] {
  return whole(() => {
    const limits = bandIn(band);
    const name = one(word(limit, "band limit"));
    return single(limits === undefined || name === undefined ? undefined : bandLimit(limits, name));
  });
}

/**
 * What a row breaches: in band, or check reading, runoff pH low/high, runoff EC low/high, salt ratio high, input pH low/high, input EC high, joined by "; ".
 * @customfunction ROWFLAG
 * @helpurl https://localhost:3000/docs/functions.html#rowflag
 * @param input_ph pH of what was poured in, cell or range
 * @param input_ec mS/cm at 25 C of what was poured in, cell or range
 * @param runoff_ph pH of what drained, cell or range
 * @param runoff_ec mS/cm at 25 C of what drained, cell or range
 * @param band a text such as "coir", "coir, heavy" or "peat, medium, pour-through", or four cells: pH low, pH high, EC low, EC high
 * @param [ratio_limit] salt ratio to flag above, whatever the runoff EC; left out: 1.5, where the runoff EC is above its band
 * @returns text
 * @remarks A reading not taken is not judged; a row without any runoff reading is blank, unless what went in is out of band. The limits themselves are in band. Against plain water (input below 0.5 mS/cm) no ratio is judged.
 * @example =RUNOFF.ROWFLAG(5.9, 1.6, 6.1, 2.2, "coir") -> in band
 * @example =RUNOFF.ROWFLAG(5.9, 1.6, 5.2, 4.1, "coir") -> runoff pH low; runoff EC high; salt ratio high
 * @see [the band table](sources.md#the-band-table); ratio limit: common practice
 */
export function rowflag(
  input_ph: any[][],
  input_ec: any[][],
  runoff_ph: any[][],
  runoff_ec: any[][],
  band: any[][],
  ratio_limit?: any[][],
): any[][] {
  return whole(() => {
    const limits = bandIn(band);
    const ratioLimit = one(reading(ratio_limit, ratioLimitIn, "ratio limit"));
    return eachCell(
      (inputPh, inputEc, runoffPh, runoffEc) => flagged(inputPh, inputEc, runoffPh, runoffEc, limits, ratioLimit),
      ifTaken(reading(input_ph, asGiven, "input pH")),
      ifTaken(reading(input_ec, asGiven, "input EC")),
      ifTaken(reading(runoff_ph, asGiven, "runoff pH")),
      ifTaken(reading(runoff_ec, asGiven, "runoff EC")),
    );
  });
}

type Taken = number | null;

function flagged(
  inputPh: Taken,
  inputEc: Taken,
  runoffPh: Taken,
  runoffEc: Taken,
  band: Band | undefined,
  ratioLimit: number | undefined,
): Answer {
  if (band === undefined) return undefined;
  const read = (each: Taken): number | undefined => each ?? undefined;
  const row = { inputPh: read(inputPh), inputEc: read(inputEc), runoffPh: read(runoffPh), runoffEc: read(runoffEc) };
  const flags = rowFlags(row, band, ratioLimit);
  if (flags === undefined) return undefined;
  return flags.length === 0 ? "in band" : flags.join("; ");
}

function ratioLimitIn(value: number, called: string): number {
  const [lowest, highest] = quantities.saltRatio.physical;
  if (value > lowest && value <= highest) return value;
  throw new Refusal("impossible", { quantity: called, given: value, allowed: `above ${lowest}, up to ${highest}` });
}
