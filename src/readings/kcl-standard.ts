import { interpolated } from "../maths/interpolate";
import { type Celsius, type Ec25, type EcAsRead } from "../quantities";
import { Refusal } from "../refusal";
import { kclCelsius, kclStandards } from "./kcl-table";

const [weak, strong] = kclStandards;
/** mS/cm at 25 C: the middle between the two solutions on a logarithmic scale. Their curves differ by 0.6 % at 10 C. */
const nearerTheStrong = Math.sqrt(weak.at25 * strong.at25) / 1000;

/**
 * What a bottled KCl standard conducts at its own temperature, in mS/cm.
 *
 * Feeds the check of an EC meter. Closer than the straight line of `ecAt25`, which is off by 1.2 % at 10 C.
 *
 * Formula:  EC = EC25 x conductivity of KCl at t / at 25 C; a straight line between the table's rows (within 0.1 %)
 * Valid:    KCl standards, 0 to 50 C; outside: refuses
 * Source:   [pratt2001]
 *
 * @param standard mS/cm at 25 C, as on the label
 * @returns mS/cm
 * @throws {Refusal} `outside-validity` below 0 or above 50 C
 * @example kclStandardAt(ec25(1.413), solutionCelsius(20)) // 1.277
 */
export function kclStandardAt(standard: Ec25, celsius: Celsius): EcAsRead {
  const { conductivity, at25 } = standard < nearerTheStrong ? weak : strong;
  const there = interpolated(kclCelsius, conductivity, celsius);
  if (there !== undefined) return ((standard * there) / at25) as EcAsRead;
  throw new Refusal("outside-validity", {
    quantity: "standard's temperature",
    given: celsius,
    unit: "C",
    allowed: "0 to 50 C; bring meter and standard to room temperature",
  });
}
