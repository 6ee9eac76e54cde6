import { isAbove, isBelow } from "../maths/compare";
import { type Ec25, quantities } from "../quantities";
import { Refusal } from "../refusal";

const { resolution, unit } = quantities.ec;

/** Water can only bring an EC down: refuses a target above what is there, at the meter's resolution. */
export function notAboveTheMix(ecTarget: Ec25, ecNow: Ec25): void {
  if (!isAbove(ecTarget, ecNow, resolution)) return;
  throw refusedTarget(ecTarget, `at most the ${ecNow} mS/cm that is there; water only weakens, STOCKDOSE strengthens`);
}

/** Nothing mixed with this water comes down to the water's own EC: refuses a target that is not above it. */
export function aboveTheWater(ecTarget: Ec25, waterEc: Ec25): void {
  if (isAbove(ecTarget, waterEc, resolution)) return;
  throw refusedTarget(ecTarget, `above the water's own ${waterEc} mS/cm; use cleaner water or a higher target`);
}

/** Stock only brings an EC up: refuses a target below the water's own. */
export function notBelowTheWater(ecTarget: Ec25, waterEc: Ec25): void {
  if (!isBelow(ecTarget, waterEc, resolution)) return;
  throw refusedTarget(ecTarget, `at least the water's own ${waterEc} mS/cm; use cleaner water or a higher target`);
}

const refusedTarget = (given: Ec25, allowed: string): Refusal =>
  new Refusal("order", { quantity: "target EC", given, unit, allowed });
