import { type Celsius } from "../../quantities";
import { Refusal } from "../../refusal";
import { type Coefficients, coefficients } from "./constants-table";

/** Equilibrium constants of carbonate in water, mol/L. */
export interface CarbonateConstants {
  readonly first: number;
  readonly second: number;
  /** mol/L per atm */
  readonly henry: number;
  readonly water: number;
}

/** Where doses are worked out unless a temperature is given. */
export const standardCelsius = 25 as Celsius;

const kelvinAtZero = 273.15;
/** The fit holds from 0 to 90 C; no watering can is warmer than this. [plummer-busenberg-1982] */
const validCelsius: readonly [number, number] = [0, 50];

/**
 * The constants of the carbonate equilibrium at a temperature, for dilute water (activity taken as concentration).
 *
 * Formula:  log10 K = a + b T + c / T + d log10 T + e / T^2
 * Valid:    0 to 50 C; ionic strength to about 0.02, where a dose is 2 to 16 % more than needed by the acid and its
 *           first 80 % is not
 * Source:   [plummer-busenberg-1982]; water [nordstrom-1990]
 *
 * @throws {Refusal} `outside-validity` below 0 or above 50 C
 * @example -Math.log10(carbonateConstants(solutionCelsius(25)).first) // 6.352
 */
export function carbonateConstants(celsius: Celsius = standardCelsius): CarbonateConstants {
  const [low, high] = validCelsius;
  if (!(celsius >= low && celsius <= high)) {
    throw new Refusal("outside-validity", {
      quantity: "solution temperature",
      given: celsius,
      unit: "C",
      allowed: `${low} to ${high} C`,
    });
  }
  const kelvin = celsius + kelvinAtZero;
  const at = ([a, b, c, d, e]: Coefficients): number =>
    10 ** (a + b * kelvin + c / kelvin + d * Math.log10(kelvin) + e / kelvin ** 2);
  return {
    first: at(coefficients.first),
    second: at(coefficients.second),
    henry: at(coefficients.henry),
    water: at(coefficients.water),
  };
}
