import { type Celsius } from "../quantities";
import { Refusal } from "../refusal";

/** FAO 56 equation 11: kPa at 0 C, and two fitted constants. */
export const pressureAtZero = 0.6108;
export const tetens = { slope: 17.27, celsius: 237.3 } as const;

/** Where the equation stays within 0.1 % of ASHRAE's table (1 to 35 C; 0.3 % at 50 C); below 0 C there is ice. */
const validCelsius: readonly [number, number] = [0, 50];

/**
 * Vapour pressure of air full of water, in kPa.
 *
 * Formula:  e = 0.6108 exp(17.27 t / (t + 237.3))
 * Valid:    0 to 50 C; outside: refuses
 * Source:   [fao-56] equation 11
 *
 * @param called the temperature in words, for a refusal
 * @returns kPa
 * @throws {Refusal} `outside-validity` below 0 or above 50 C
 * @example saturationPressure(airCelsius(24.5)) // 3.075
 */
export function saturationPressure(celsius: Celsius, called = "air temperature"): number {
  const [low, high] = validCelsius;
  if (celsius >= low && celsius <= high)
    return pressureAtZero * Math.exp((tetens.slope * celsius) / (celsius + tetens.celsius));
  throw new Refusal("outside-validity", {
    quantity: called,
    given: celsius,
    unit: "C",
    allowed: `${low} to ${high} C`,
  });
}
