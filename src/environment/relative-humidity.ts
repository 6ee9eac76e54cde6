import { type Percent } from "../quantities";
import { Refusal } from "../refusal";

/**
 * At or below this, %, a humidity is a share typed for a percentage: no room with plants is so dry. Common practice.
 */
export const driestPercent = 1;

/**
 * Relative humidity as a share, 0 to 1.
 *
 * @throws {Refusal} `wrong-unit` at 1 % or less: 0.6 was meant as 60
 */
export function humidityShare(percent: Percent): number {
  if (percent > driestPercent) return percent / 100;
  throw new Refusal("wrong-unit", {
    quantity: "relative humidity",
    given: percent,
    unit: "%",
    allowed: "a percentage such as 60, not a share such as 0.6",
  });
}
