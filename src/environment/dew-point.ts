import { type Celsius, type Percent } from "../quantities";
import { humidityShare } from "./relative-humidity";
import { saturationPressure, pressureAtZero, tetens } from "./saturation-pressure";

/**
 * Dew point of the air, in C: a leaf or a wall colder than this gets wet.
 *
 * Formula:  t = 237.3 g / (17.27 - g); g = ln(e / 0.6108), e the vapour pressure of the air
 * Valid:    air 0 to 50 C; outside: refuses. Below 0 C it is the dew point over water; frost comes a little sooner
 * Source:   inverse of [fao-56] equation 11
 *
 * @returns C, at most the air's own temperature
 * @throws {Refusal} `outside-validity`; `wrong-unit` for a humidity typed as a share
 * @example dewPoint(airCelsius(25), humidityPercent(60)) // 16.70
 */
export function dewPoint(air: Celsius, humidity: Percent): number {
  const g = Math.log((saturationPressure(air) * humidityShare(humidity)) / pressureAtZero);
  return (tetens.celsius * g) / (tetens.slope - g);
}
