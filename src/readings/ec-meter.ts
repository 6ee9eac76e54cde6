import { isAbove } from "../maths/compare";
import { type Celsius, type Ec25, type EcAsRead, quantities } from "../quantities";
import { Refusal } from "../refusal";
import { kclStandardAt } from "./kcl-standard";

/** How a meter was held against its standard. */
export interface MeterConditions {
  readonly celsius: Celsius;
  /** Whether the meter itself corrects to 25 C. */
  readonly compensating: boolean;
}

export interface MeterCheck {
  /** % by which the meter shows too much (+) or too little (-). */
  readonly errorPercent: number;
  /** mS/cm that a true meter would show. */
  readonly expected: number;
  readonly reason: string;
}

/** %, our judgement; a bench standard itself is good to 1 %. */
export const trustedErrorPercent = 2;
/** Beyond this, %, another standard or another unit is likelier than a meter's drift: our judgement. */
const anotherStandard = 30;
const resolution = 0.1;

/**
 * How far an EC meter is off, in % of the KCl standard it was held into.
 *
 * Feeds the trust in every EC of the log. A meter that shows too little makes the feed too strong: clean and calibrate
 * first.
 *
 * Formula:  error = (shown - expected) / expected; expected = the standard's EC at 25 C for a compensating meter, what
 *           the standard conducts at its temperature for one that does not compensate
 * Valid:    KCl standards at 0 to 50 C; outside: refuses
 * Source:   [pratt2001]; the 2 % tolerance is our judgement
 *
 * @throws {Refusal} `outside-validity` as `kclStandardAt`; `impossible` for a standard of 0; `wrong-unit` for less than
 *   half or more than twice of it
 * @example ecMeter(ecAsRead(1.3), ec25(1.413), { celsius: solutionCelsius(20), compensating: false }).errorPercent // 1.77
 */
export function ecMeter(
  shown: Ec25 | EcAsRead,
  standard: Ec25,
  { celsius, compensating }: MeterConditions,
): MeterCheck {
  if (!(standard > 0)) {
    throw new Refusal("impossible", {
      quantity: "standard EC",
      given: standard,
      unit: quantities.ec.unit,
      allowed: "above 0",
    });
  }
  const uncompensated = kclStandardAt(standard, celsius);
  const expected = compensating ? standard : uncompensated;
  const errorPercent = ((shown - expected) / expected) * 100;
  sameStandard(shown, expected, standard);
  const basis = compensating ? "a compensating meter shows its EC at 25 C" : `without compensation at ${celsius} C`;
  const reason = `a true meter would show ${expected.toFixed(3)} mS/cm (${basis}); ${advice(errorPercent)}`;
  return { errorPercent, expected, reason };
}

/** A meter that shows less than half or more than twice its standard stands in another one, or shows another unit. */
function sameStandard(shown: number, expected: number, standard: Ec25): void {
  if (shown <= 2 * expected && 2 * shown >= expected) return;
  const allowed = `about ${expected.toFixed(3)} mS/cm in a standard of ${standard}: check the bottle and the unit`;
  throw new Refusal("wrong-unit", { quantity: "EC shown", given: shown, unit: quantities.ec.unit, allowed });
}

function advice(errorPercent: number): string {
  const size = Math.abs(errorPercent);
  const off = `${errorPercent.toFixed(1)} % off`;
  if (isAbove(size, anotherStandard, resolution)) return `${off}: check that it is this standard and this unit`;
  if (isAbove(size, trustedErrorPercent, resolution))
    return `${off}, beyond ${trustedErrorPercent} %: clean, rinse, calibrate and repeat`;
  return `${off}, within ${trustedErrorPercent} %`;
}
