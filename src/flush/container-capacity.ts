import { type Medium } from "../bands/media-table";
import { type Litres, quantities } from "../quantities";
import { Refusal } from "../refusal";
import { washingOf } from "./container-table";

/**
 * Container capacity: the litres of water a pot still holds when it has stopped dripping.
 *
 * Feeds the washout model, which counts water in container capacities.
 *
 * Formula:  capacity = pot volume x share held
 * Valid:    a filled pot of ordinary height; a shallow one holds more, a tall one less
 * Source:   src/flush/container-table.ts, a standing per row
 *
 * @param containerLitres the pot's own volume, L
 * @returns L
 * @throws {Refusal} `impossible` when the pot has no volume, `implausible` above 2000 L; `unknown-choice` for a tank
 *   without a drain
 * @example containerCapacity(litres(10), "coir") // 6.5
 */
export function containerCapacity(containerLitres: Litres, medium: Medium): Litres {
  return (potVolume(containerLitres) * washingOf(medium).shareHeld) as Litres;
}

/**
 * How fast a pot washes out: the share of its excess salt that the next litre would carry off at first.
 *
 * Formula:  rate = f / capacity; f the mixing efficiency
 * Source:   src/flush/container-table.ts
 *
 * @returns per litre
 * @example washoutRate(litres(10), "coir") // 0.1077
 */
export function washoutRate(containerLitres: Litres, medium: Medium): number {
  return washingOf(medium).mixing / containerCapacity(containerLitres, medium);
}

/** The pot's volume, which must be something. */
export function potVolume(containerLitres: Litres): Litres {
  const [, largest] = quantities.litres.plausible;
  if (containerLitres > largest) {
    const allowed = `up to ${largest} L; divide mL by 1000`;
    throw new Refusal("implausible", { quantity: "container volume", given: containerLitres, unit: "L", allowed });
  }
  if (containerLitres > 0) return containerLitres;
  throw new Refusal("impossible", {
    quantity: "container volume",
    given: containerLitres,
    unit: "L",
    allowed: "above 0",
  });
}
