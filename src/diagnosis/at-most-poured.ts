import { type Litres } from "../quantities";
import { Refusal } from "../refusal";

/** Refuses more runoff than was poured in. @throws {Refusal} `impossible` */
export function atMostPoured(runoffLitres: Litres, inputLitres: Litres): void {
  if (runoffLitres <= inputLitres) return;
  throw new Refusal("impossible", {
    quantity: "runoff volume",
    given: runoffLitres,
    allowed: `at most the input volume ${inputLitres}; check both volumes and their units`,
  });
}
