import { type Medium } from "../bands/media-table";
import { type Ec25, type Litres } from "../quantities";
import { washoutRate } from "./container-capacity";
import { overFlushLimit } from "./over-flush-limit";
import { washoutEc, washoutLitres } from "./washout";
import { inLitres, inMillisiemens } from "./words";

/** The pot and the water it is washed with. */
export interface FlushPot {
  readonly containerLitres: Litres;
  /** mS/cm at 25 C of the water poured. */
  readonly waterEc: Ec25;
  readonly medium: Medium;
}

export interface FlushVolume {
  /** To carry to the pot: what the target needs, at most the limit. */
  readonly litres: Litres;
  /** What the target needs by the model, whether or not a flush goes so far. */
  readonly neededLitres: Litres;
  /** Where any flush ends. */
  readonly limitLitres: Litres;
  readonly capped: boolean;
  /** mS/cm at 25 C that the runoff is expected to read after these litres. */
  readonly expectedEc: Ec25;
  /** Put into words when asked for: a column of litres needs none. */
  readonly reasons: readonly [string, ...string[]];
}

/**
 * Litres of water expected to bring a pot's runoff down to a target, by medium, never above the over-flush limit.
 *
 * A first guess from tables of judgement, for carrying water; `flushLeft` replaces it by the pot's own readings. Errs
 * to less water: beyond the limit it says how far the limit reaches.
 *
 * Formula:  L = min(ln((EC0 - ECw) / (ECt - ECw)) x container capacity / f, over-flush limit)
 * Valid:    a pot already wet through; a target above the water's own EC
 * Source:   as `washoutEc`; capacity and f from src/flush/container-table.ts; the limit as `overFlushLimit`
 *
 * @returns 0 L when the runoff is already at the target
 * @throws {Refusal} `impossible` when the target does not lie above the water's EC, or the pot has no volume
 * @example flushVolume(ec25(6), ec25(3), { containerLitres: litres(10), waterEc: ec25(0.4), medium: "coir" }).litres // 7.125
 */
export function flushVolume(
  runoffEc: Ec25,
  targetEc: Ec25,
  { containerLitres, waterEc, medium }: FlushPot,
): FlushVolume {
  const ratePerLitre = washoutRate(containerLitres, medium);
  const neededLitres = washoutLitres(runoffEc, targetEc, { waterEc, ratePerLitre });
  const limitLitres = overFlushLimit(containerLitres, medium);
  const litres = Math.min(neededLitres, limitLitres) as Litres;
  const expectedEc = washoutEc(runoffEc, waterEc, { litres, ratePerLitre });
  const capped = neededLitres > limitLitres;
  return new VolumeFound({ litres, neededLitres, limitLitres, capped, expectedEc }, targetEc);
}

/** A class, for a getter made anew for each row of a column takes ten times as long as all of its figures. */
class VolumeFound implements FlushVolume {
  readonly litres: Litres;
  readonly neededLitres: Litres;
  readonly limitLitres: Litres;
  readonly capped: boolean;
  readonly expectedEc: Ec25;
  readonly #targetEc: Ec25;

  constructor(figures: Figures, targetEc: Ec25) {
    this.litres = figures.litres;
    this.neededLitres = figures.neededLitres;
    this.limitLitres = figures.limitLitres;
    this.capped = figures.capped;
    this.expectedEc = figures.expectedEc;
    this.#targetEc = targetEc;
  }

  get reasons(): FlushVolume["reasons"] {
    return reasonsFor(this, this.#targetEc);
  }
}

type Figures = Omit<FlushVolume, "reasons">;

function reasonsFor(
  { litres, neededLitres, limitLitres, capped, expectedEc }: Figures,
  targetEc: Ec25,
): FlushVolume["reasons"] {
  const limit = `the over-flush limit of ${inLitres(limitLitres)}`;
  const where: FlushVolume["reasons"] = capped
    ? [
        `ends at ${limit}: the runoff is expected at ${inMillisiemens(expectedEc)}, not at ${inMillisiemens(targetEc)}`,
        `by the model the target needs ${inLitres(neededLitres)}: stop at the limit, let it drain, and judge again in some days`,
      ]
    : [`${inLitres(litres)} of ${limit}: the runoff is expected at ${inMillisiemens(expectedEc)}`];
  return [...where, "in portions, with a reading after each"];
}
