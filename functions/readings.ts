import * as engine from "../src/index";
import { eachCell } from "./answers";
import { amount, type Argument, type Cells, choice, content, reading } from "./cells";

const coefficient = (cells: Cells | null | undefined): Argument<engine.Percent> =>
  reading(cells, engine.percentPerCelsius, "temperature coefficient", engine.standardPercentPerCelsius);

/** The scale of a ppm figure. A blank one is refused, not passed over: a ppm without its scale means nothing. */
const scaleIn = (cells: Cells | null | undefined): Argument<engine.PpmScale> => ({
  cells: cells ?? [[undefined]],
  called: "ppm scale",
  read: (cell) => {
    const given = content(cell);
    return engine.ppmScaleNamed(given === 0 ? undefined : typeof given === "boolean" ? String(given) : given);
  },
  quick: engine.quantities.ppmScale.physical,
});

/**
 * EC at 25 C from a reading of a meter that does not compensate for temperature. Blank in, blank out.
 * @customfunction ECAT25
 * @helpurl https://localhost:3000/docs/functions.html#ecat25
 * @param ec mS/cm as read, cell or range
 * @param temp_c C of the solution when it was read, cell or range
 * @param [percent_per_c] % per C, 1.91 if left out
 * @returns mS/cm at 25 C
 * @remarks Never for a meter that already compensates: 8 C off 25 C would count twice, 15 %. Refuses outside 0 to 50 C.
 * @example =RUNOFF.ECAT25(1.305, 21) -> 1.413
 * @see [standard-methods-2510] [epa-120.1]
 */
export function ecat25(ec: any[][], temp_c: any[][], percent_per_c?: any[][]): any[][] {
  return eachCell(
    engine.ecAt25,
    reading(ec, engine.ecAsRead, "EC as read"),
    reading(temp_c, engine.solutionCelsius, "solution temperature"),
    coefficient(percent_per_c),
  );
}

/**
 * What a meter without temperature compensation shows for a solution whose EC at 25 C is known.
 * @customfunction ECATTEMP
 * @helpurl https://localhost:3000/docs/functions.html#ecattemp
 * @param ec25 mS/cm at 25 C, cell or range
 * @param temp_c C of the solution, cell or range
 * @param [percent_per_c] % per C, 1.91 if left out
 * @returns mS/cm as read
 * @remarks The inverse of ECAT25. Refuses outside 0 to 50 C.
 * @example =RUNOFF.ECATTEMP(1.413, 21) -> 1.305
 * @see [standard-methods-2510] [epa-120.1]
 */
export function ecattemp(ec25: any[][], temp_c: any[][], percent_per_c?: any[][]): any[][] {
  return eachCell(
    engine.ecAtTemperature,
    reading(ec25, engine.ec25, "EC at 25 C"),
    reading(temp_c, engine.solutionCelsius, "solution temperature"),
    coefficient(percent_per_c),
  );
}

/**
 * EC in another unit: mS/cm, uS/cm, dS/m, mS/m, S/m or CF.
 * @customfunction ECUNIT
 * @helpurl https://localhost:3000/docs/functions.html#ecunit
 * @param value EC in the unit named next, cell or range
 * @param from unit of the value: "mS/cm", "uS/cm", "dS/m", "mS/m", "S/m" or "CF" (tenths of a mS/cm)
 * @param to unit of the answer, one of the same
 * @returns EC in the unit asked for
 * @remarks Either micro sign and any case will do. Refuses an unknown unit with the list, and an EC above 200 mS/cm.
 * @example =RUNOFF.ECUNIT(1413, "uS/cm", "mS/cm") -> 1.413
 * @example =RUNOFF.ECUNIT(2.4, "mS/cm", "S/m") -> 0.24
 * @example =RUNOFF.ECUNIT(24, "CF", "mS/cm") -> 2.4
 * @see [si-brochure]; CF common practice
 */
export function ecunit(value: any[][], from: any[][], to: any[][]): any[][] {
  return eachCell(
    engine.ecInUnit,
    reading(value, anyNumber, "EC"),
    choice(from, "EC unit", engine.ecUnitNamed),
    choice(to, "EC unit", engine.ecUnitNamed),
  );
}

/** Which numbers can be is for the unit to say. */
const anyNumber = Object.assign((given: number): number => given, { physical: [0, Infinity] as const });

/**
 * Alkalinity in another unit, as water reports print it: mg/L CaCO3, mg/L HCO3, meq/L, mmol/L HCO3 or dH (degrees of carbonate hardness).
 * @customfunction ALKUNIT
 * @helpurl https://localhost:3000/docs/functions.html#alkunit
 * @param value alkalinity in the unit named next, cell or range
 * @param from unit of the value: "mg/L CaCO3", "mg/L HCO3", "meq/L", "mmol/L HCO3" or "dH"
 * @param to unit of the answer, one of the same
 * @returns alkalinity in the unit asked for
 * @remarks A bare mg/L or mmol/L is refused: of CaCO3 and of HCO3 it means different waters. Refuses more than 5000 mg/L as CaCO3. A 0 is a value: rain water.
 * @example =RUNOFF.ALKUNIT(244, "mg/L HCO3", "mg/L CaCO3") -> 200.1
 * @example =RUNOFF.ALKUNIT(5.6, "dH", "meq/L") -> 1.997
 * @see [iupac-weights-2021]; the degree by its definition, 10 mg/L of CaO
 */
export function alkunit(value: any[][], from: any[][], to: any[][]): any[][] {
  return eachCell(
    engine.alkalinityInUnit,
    amount(value, anyNumber, "alkalinity"),
    choice(from, "alkalinity unit", engine.alkalinityUnitNamed),
    choice(to, "alkalinity unit", engine.alkalinityUnitNamed),
  );
}

/**
 * ppm for an EC on a named scale: 500, 640 or 700 ppm per mS/cm. There is no default scale.
 * @customfunction PPM
 * @helpurl https://localhost:3000/docs/functions.html#ppm
 * @param ec mS/cm at 25 C, cell or range
 * @param scale ppm per mS/cm: 500, 640, 700 or your meter's own factor, 400 to 1000
 * @returns ppm on that scale
 * @remarks A scale's figure, not grams of salt. Refuses a missing scale: a ppm without its scale means nothing.
 * @example =RUNOFF.PPM(1.15, 640) -> 736
 * @example =RUNOFF.PPM(2, "500") -> 1000
 * @see [handbook-60] for 640; common practice for 500 and 700
 */
export function ppm(ec: any[][], scale: any[][]): any[][] {
  return eachCell(engine.ppmOfEc, reading(ec, engine.ec25, "EC"), scaleIn(scale));
}

/**
 * EC at 25 C behind a ppm figure of a known scale.
 * @customfunction ECFROMPPM
 * @helpurl https://localhost:3000/docs/functions.html#ecfromppm
 * @param ppm ppm, cell or range
 * @param scale ppm per mS/cm on which it was read: 500, 640, 700 or 400 to 1000
 * @returns mS/cm at 25 C
 * @remarks The inverse of PPM. Refuses a missing scale.
 * @example =RUNOFF.ECFROMPPM(1000, 500) -> 2
 * @see [handbook-60] for 640; common practice for 500 and 700
 */
export function ecfromppm(ppm: any[][], scale: any[][]): any[][] {
  return eachCell(engine.ecFromPpm, reading(ppm, engine.ppm, "ppm"), scaleIn(scale));
}

/**
 * A ppm figure of one scale on another scale.
 * @customfunction PPMRESCALE
 * @helpurl https://localhost:3000/docs/functions.html#ppmrescale
 * @param ppm ppm, cell or range
 * @param from_scale ppm per mS/cm on which it was read: 500, 640, 700 or 400 to 1000
 * @param to_scale ppm per mS/cm of the answer
 * @returns ppm on the other scale
 * @remarks Refuses a missing scale on either side.
 * @example =RUNOFF.PPMRESCALE(1000, 500, 700) -> 1400
 * @see [handbook-60] for 640; common practice for 500 and 700
 */
export function ppmrescale(ppm: any[][], from_scale: any[][], to_scale: any[][]): any[][] {
  return eachCell(engine.ppmRescale, reading(ppm, engine.ppm, "ppm"), scaleIn(from_scale), scaleIn(to_scale));
}
