import { type Celsius } from "../quantities";
import { Refusal } from "../refusal";

/** Where 0 C stands on the Fahrenheit scale, and how many F one C is; both exact, [nist-sp-811] B.8. */
export const freezingFahrenheit = 32;
export const fahrenheitPerCelsius = 1.8;

/**
 * Temperature in C from degrees Fahrenheit.
 *
 * Feeds EC at 25 C and VPD when the log is kept in F.
 *
 * Formula:  t(C) = (t(F) - 32) / 1.8
 * Source:   [nist-sp-811] B.8
 *
 * @throws {Refusal} `not-a-number`
 * @example celsiusFromFahrenheit(68) // 20
 */
export function celsiusFromFahrenheit(fahrenheit: number): Celsius {
  if (!Number.isFinite(fahrenheit)) throw new Refusal("not-a-number", { quantity: "temperature", given: fahrenheit });
  return ((fahrenheit - freezingFahrenheit) / fahrenheitPerCelsius) as Celsius;
}
