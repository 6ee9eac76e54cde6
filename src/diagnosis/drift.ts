import { type Dated } from "../maths/dated";
import { theilSen } from "../maths/theil-sen";

/**
 * Drift: by how much a reading changes a day, whatever one mistyped value says.
 *
 * Feeds the quiet weeks: a slow rise shows here long before a reading leaves the band.
 *
 * Formula:  the median of the slopes between all pairs of readings on different days (`theilSen`)
 * Valid:    rows in any order; several readings on one day
 * Source:   [sen-1968]
 *
 * @returns the readings' unit a day
 * @throws {Refusal} `not-enough-readings` with fewer than two different days
 * @example drift([{ day: 0, value: 2 }, { day: 2, value: 2.4 }, { day: 4, value: 2.8 }]) // 0.2
 */
export function drift(readings: readonly Dated[]): number {
  return theilSen(readings).slope;
}
