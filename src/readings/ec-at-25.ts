import { type Celsius, type Ec25, type EcAsRead, type Percent } from "../quantities";
import { Refusal } from "../refusal";

/** Percent per C. Standard Methods 2510 B; reproduces the KCl table of EPA Method 120.1, 21 to 28 C, within 2 uS/cm. */
export const standardPercentPerCelsius = 1.91 as Percent;

/** The temperature that every EC is brought to, C. [standard-methods-2510] */
export const referenceCelsius = 25;

/**
 * The linear rule follows KCl within 0.7 % from 15 to 35 C, 1.6 % at 10 C, 3.3 % at 5 C and 2.1 % at 50 C [pratt2001].
 */
const validCelsius: readonly [number, number] = [0, 50];

/**
 * EC at 25 C, in mS/cm, from the reading of a meter that does not compensate for temperature.
 *
 * Feeds every comparison between two readings. Never apply it to a meter that already compensates: 8 C off 25 C would
 * be counted twice, an error of 15 %.
 *
 * Formula:  EC25 = EC / (1 + a (t - 25)); a as a share per C
 * Valid:    0 to 50 C, feed and runoff of mixed salts; outside: refuses
 * Source:   [standard-methods-2510], [epa-120.1]
 *
 * @param asRead mS/cm at the solution's own temperature
 * @param celsius C of the solution when it was read
 * @param percent % per C, 1.91 unless the meter's maker says otherwise
 * @returns mS/cm at 25 C
 * @throws {Refusal} `outside-validity` below 0 C, above 50 C, or where the coefficient leaves nothing to divide by
 * @example ecAt25(ecAsRead(1.305), solutionCelsius(21)) // 1.413
 */
export function ecAt25(asRead: EcAsRead, celsius: Celsius, percent: Percent = standardPercentPerCelsius): Ec25 {
  return (asRead / temperatureFactor(celsius, percent)) as Ec25;
}

/**
 * What a meter without compensation shows, in mS/cm, for a solution whose EC at 25 C is known: the inverse of `ecAt25`.
 *
 * Feeds a meter check in a standard that is not at 25 C.
 *
 * Formula:  EC = EC25 (1 + a (t - 25))
 * Valid:    as `ecAt25`
 * Source:   [standard-methods-2510]
 *
 * @returns mS/cm as read at that temperature
 * @throws {Refusal} `outside-validity` as `ecAt25`
 * @example ecAtTemperature(ec25(1.413), solutionCelsius(21)) // 1.305
 */
export function ecAtTemperature(at25: Ec25, celsius: Celsius, percent: Percent = standardPercentPerCelsius): EcAsRead {
  return (at25 * temperatureFactor(celsius, percent)) as EcAsRead;
}

function temperatureFactor(celsius: Celsius, percent: Percent): number {
  const [low, high] = validCelsius;
  const factor = 1 + (percent / 100) * (celsius - referenceCelsius);
  if (celsius >= low && celsius <= high && factor > 0) return factor;
  throw new Refusal("outside-validity", {
    quantity: "solution temperature",
    given: celsius,
    unit: "C",
    allowed: `${low} to ${high} C; let the sample come to room temperature`,
  });
}
