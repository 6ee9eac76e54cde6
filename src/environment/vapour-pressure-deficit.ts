import { type Celsius, type Percent } from "../quantities";
import { humidityShare } from "./relative-humidity";
import { saturationPressure } from "./saturation-pressure";

/**
 * Vapour pressure deficit, in kPa: how hard the air pulls water out of a leaf.
 *
 * Feeds how fast pots dry and salts concentrate. Without a leaf temperature the leaf counts as being as warm as the
 * air.
 *
 * Formula:  VPD = e(leaf) - e(air) RH / 100
 * Valid:    0 to 50 C; outside: refuses
 * Source:   [fao-56] equations 11 and 17
 *
 * @param humidity % relative humidity of the air
 * @returns kPa; below 0 the leaf is colder than the dew point and dew settles on it
 * @throws {Refusal} `outside-validity`; `wrong-unit` for a humidity typed as a share
 * @example vapourPressureDeficit(airCelsius(25), humidityPercent(60)) // 1.267
 */
export function vapourPressureDeficit(air: Celsius, humidity: Percent, leaf: Celsius = air): number {
  const inAir = saturationPressure(air) * humidityShare(humidity);
  return saturationPressure(leaf, "leaf temperature") - inAir;
}
