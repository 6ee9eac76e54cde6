import { type Ec25, type Litres, type Share } from "../quantities";
import { Refusal } from "../refusal";
import { containerCapacity, washoutRate } from "./container-capacity";
import { type FlushPot, flushVolume } from "./flush-volume";
import { washoutEc } from "./washout";

/** A quarter of what the pot holds: small pulses wash out more than one slug of the same water. Common practice. */
export const standardPortionShare = 0.25 as Share;

/**
 * Smaller portions than a twentieth never reach the bottom; larger ones than a capacity run past the roots. Common
 * practice.
 */
const portionShares: readonly [number, number] = [0.05, 1];

/** So that 4.000000000000001 portions are four. */
const roundOff = 1e-9;

export interface FlushPortion {
  /** Counted from 1. */
  readonly portion: number;
  readonly litres: Litres;
  readonly litresSoFar: Litres;
  /** mS/cm at 25 C that the runoff is expected to read after it. */
  readonly expectedEc: Ec25;
}

export interface FlushPlan {
  readonly portions: readonly FlushPortion[];
  /** What the target needs by the model, whether or not the plan goes so far. */
  readonly neededLitres: Litres;
  /** Where any flush ends. */
  readonly limitLitres: Litres;
  readonly capped: boolean;
}

/**
 * A flush in equal portions, with the runoff EC expected after each, to be poured with a pause and a reading in
 * between.
 *
 * Errs to less water: it ends at the over-flush limit and says that it falls short of the target.
 *
 * Formula:  n = ceil(volume / (share x container capacity)) portions of volume / n; EC by `washoutEc`
 * Valid:    as `flushVolume`; a portion of 0.05 to 1 container capacity
 * Source:   as `washoutEc`; limit from `overFlushLimit`
 *
 * @returns no portions when the runoff is already at the target
 * @throws {Refusal} `outside-validity` for another portion share; `impossible` as `flushVolume`
 * @example flushPlan(ec25(6), ec25(3), { containerLitres: litres(10), waterEc: ec25(0.4), medium: "coir" }).portions.length // 5
 */
export function flushPlan(
  runoffEc: Ec25,
  targetEc: Ec25,
  pot: FlushPot & { readonly portionShare?: Share },
): FlushPlan {
  const share = portionShare(pot.portionShare ?? standardPortionShare);
  const { litres: volume, neededLitres, limitLitres, capped } = flushVolume(runoffEc, targetEc, pot);
  const count = Math.ceil(volume / (share * containerCapacity(pot.containerLitres, pot.medium)) - roundOff);
  const ratePerLitre = washoutRate(pot.containerLitres, pot.medium);
  const portions = Array.from({ length: count }, (_, index): FlushPortion => {
    const litresSoFar = ((volume * (index + 1)) / count) as Litres;
    const expectedEc = washoutEc(runoffEc, pot.waterEc, { litres: litresSoFar, ratePerLitre });
    return { portion: index + 1, litres: (volume / count) as Litres, litresSoFar, expectedEc };
  });
  return { portions, neededLitres, limitLitres, capped };
}

function portionShare(share: Share): Share {
  const [low, high] = portionShares;
  if (share >= low && share <= high) return share;
  throw new Refusal("outside-validity", {
    quantity: "portion share",
    given: share,
    allowed: `${low} to ${high} of what the pot holds`,
  });
}
