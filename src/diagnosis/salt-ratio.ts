import { type Ec25, quantities, written } from "../quantities";
import { Refusal } from "../refusal";

/**
 * Salt ratio: how many times saltier the runoff is than what was poured in.
 *
 * Feeds the first look at salt buildup. A high ratio alone is no injury: a bed that leaches little settles at 3 to 7,
 * so read it beside the leaching fraction (`ratioCeiling`).
 *
 * Formula:  ratio = runoff EC / input EC
 * Valid:    both readings at 25 C and on one scale; above 100 one of them is in another unit: refuses
 * Source:   common practice; [ku-hershey-1991] for its meaning
 *
 * @param runoffEc mS/cm at 25 C of what drained
 * @param inputEc mS/cm at 25 C of what was poured in
 * @returns no unit; 1 = what goes in comes out, above 1 = salt is concentrating or staying
 * @throws {Refusal} `impossible` when the input EC is 0; `wrong-unit` when the ratio is above 100
 * @example saltRatio(ec25(2.4), ec25(1.5)) // 1.6
 */
export function saltRatio(runoffEc: Ec25, inputEc: Ec25): number {
  if (!(inputEc > 0))
    throw new Refusal("impossible", { quantity: "input EC", given: inputEc, unit: "mS/cm", allowed: "above 0" });
  const ratio = runoffEc / inputEc;
  const [, highest] = quantities.saltRatio.physical;
  if (ratio <= highest) return ratio;
  throw new Refusal("wrong-unit", {
    quantity: `input EC beside a runoff EC of ${written(runoffEc, "ec")}`,
    given: written(inputEc, "ec"),
    allowed: `a ratio of at most ${highest}; check the units of both`,
  });
}
