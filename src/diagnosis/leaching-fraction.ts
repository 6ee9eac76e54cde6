import { type Litres, type Share } from "../quantities";
import { Refusal } from "../refusal";
import { atMostPoured } from "./at-most-poured";

/**
 * Leaching fraction: the share of what was poured in that drained out again, 0 to 1.
 *
 * Feeds the reading of a salt ratio: a bed that leaches little settles at a high ratio without being ill.
 *
 * Formula:  LF = runoff volume / input volume
 * Valid:    one irrigation, both volumes in one unit; runoff above input means rain, a pooled saucer or a typing error
 * Source:   [rhoades-1974]; [ku-hershey-1991] for pots
 *
 * @throws {Refusal} `missing` when nothing was poured in; `impossible` when more drained than was poured
 * @example leachingFraction(litres(0.4), litres(2)) // 0.2
 */
export function leachingFraction(runoffLitres: Litres, inputLitres: Litres): Share {
  if (!(inputLitres > 0)) throw new Refusal("missing", { quantity: "input volume" });
  atMostPoured(runoffLitres, inputLitres);
  return (runoffLitres / inputLitres) as Share;
}
