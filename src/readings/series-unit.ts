import { quantities } from "../quantities";
import { Refusal } from "../refusal";

// A series of readings comes without its unit: pH, mS/cm, uS/cm or ppm. Its figures tell which meter stands behind
// them.

/** No pH and no mS/cm stands above this: such a figure is uS/cm or ppm. */
const [, highestMillisiemens] = quantities.ec.physical;

/**
 * Two readings of one meter may differ by this much and mean the same: 2 % of the reading, at least five steps (0.05
 * mS/cm). Bench and pocket meters promise 2 %; the floor covers the sample's own drips and temperature. Common
 * practice.
 */
const toleranceShare = 0.02;
const toleranceSteps = 5;

/** Readings that stand a hundredfold beyond their limits are in another unit: uS/cm beside mS/cm is a thousandfold. */
const anotherUnit = 100;

/** The smallest step of the meter behind readings around this figure: 0.01 for pH and mS/cm, 10 for uS/cm and ppm. */
export const meterStep = (figure: number): number =>
  Math.abs(figure) > highestMillisiemens ? quantities.ppm.resolution : quantities.ec.resolution;

/** How far apart two readings near this figure must be before they count as different. */
export const meterTolerance = (figure: number): number =>
  Math.max(toleranceSteps * meterStep(figure), toleranceShare * Math.abs(figure));

/** Refuses readings in another unit than their limits. @throws {Refusal} `wrong-unit` */
export function inUnitOfLimits(values: readonly number[], low: number, high: number): void {
  const limitsInSmallUnits = high > highestMillisiemens;
  const strange = values.find(
    (value) => value > anotherUnit * high || (limitsInSmallUnits && value > 0 && anotherUnit * value < low),
  );
  if (strange === undefined) return;
  throw new Refusal("wrong-unit", {
    quantity: "a reading of",
    given: strange,
    allowed: `the unit of its limits, ${low} to ${high}`,
  });
}
