import { type Ec25, isPlausible, type Ph, quantities } from "../quantities";
import { Refusal } from "../refusal";
import { soilless } from "./ec-classes";
import { type BandLimits, type Feeder, type Sample, samples } from "./limits";
import { mediaTable, type Medium, type MediumRow } from "./media-table";

/** The limits a pot's runoff is held against; both ends belong to the inside. */
export interface Band {
  /** Unknown when the grower gave limits of their own and no medium. */
  readonly medium: Medium | undefined;
  readonly feeder: Feeder | undefined;
  /** How the sample was taken that these limits are for. */
  readonly sample: Sample;
  readonly ph: readonly [low: number, high: number];
  /** The pH to pour at. */
  readonly phAim: number;
  /** mS/cm at 25 C. */
  readonly ec: readonly [low: number, high: number];
  /** mS/cm at 25 C: what is poured in is too strong above it. An extract's limits say nothing about that. */
  readonly feedEcHigh: number;
  /** Where each pair of limits comes from: a key of docs/sources.md, "common practice" or "own limits". */
  readonly source: { readonly ph: string; readonly ec: string };
}

/** What stands beside the medium in the name of a band. */
export interface BandChoice {
  readonly feeder?: Feeder | undefined;
  readonly sample?: Sample | undefined;
}

/**
 * The limits for a medium, a feeder class and a way of sampling, from the table.
 *
 * Feeds row flags, the judgement and the stop check. The grower's own limits (`ownBand`) always win.
 *
 * Source:   src/bands/media-table.ts and ec-classes.ts, a source per row
 *
 * @throws {Refusal} `unknown-choice` for a sample that tells nothing of this medium, as an extract of mineral wool
 * @example bandFor("coir", "medium").ec // [1.2, 3.5]
 */
export function bandFor(medium: Medium, feeder: Feeder = "medium", sample: Sample = "drain"): Band {
  const { ph, ec }: MediumRow = mediaTable[medium];
  const limits = ec[sample]?.[feeder];
  if (limits === undefined) {
    const allowed = samples.filter((each) => ec[each] !== undefined).join(", ");
    throw new Refusal("unknown-choice", {
      quantity: `sample of ${medium}`,
      given: sample,
      allowed: `${allowed}; or limits of your own`,
    });
  }
  const feed = medium === "bark" ? soilless.drain : ec.drain;
  return {
    medium,
    feeder,
    sample,
    ph: [ph.low, ph.high],
    phAim: ph.aim,
    ec: [limits.low, limits.high],
    feedEcHigh: feed[feeder].high,
    source: { ph: ph.source, ec: (limits satisfies BandLimits).source },
  };
}

const ownSource = "own limits";

/** Whether a band is the grower's own: it holds whatever the medium's is, and no table is asked beside it. */
export const isOwnBand = ({ source }: Pick<Band, "source">): boolean => source.ec === ownSource;

/**
 * The grower's own four limits, which win over any table.
 *
 * @param of what they are for, where that is known
 * @throws {Refusal} `order` when a low limit is not below its high one; `implausible` pH limits, as when pH and EC
 *   changed
 *   places; `wrong-unit` EC limits beyond any feed
 * @example ownBand(ph(5.6), ph(6.4), ec25(1.5), ec25(3)).ph // [5.6, 6.4]
 */
export function ownBand(
  phLow: Ph,
  phHigh: Ph,
  ecLow: Ec25,
  ecHigh: Ec25,
  of: BandChoice & { readonly medium?: Medium | undefined } = {},
): Band {
  ordered("pH low limit", phLow, phHigh);
  ordered("runoff EC low limit", ecLow, ecHigh);
  believed(phLow, phHigh);
  const highest = quantities.ec.plausible[1];
  if (ecHigh > highest) {
    throw new Refusal("wrong-unit", {
      quantity: "runoff EC high limit",
      given: ecHigh,
      unit: "mS/cm",
      allowed: `mS/cm up to ${highest}`,
    });
  }
  const { medium, feeder, sample = "drain" } = of;
  const source = { ph: ownSource, ec: ownSource };
  return {
    medium,
    feeder,
    sample,
    ph: [phLow, phHigh],
    phAim: (phLow + phHigh) / 2,
    ec: [ecLow, ecHigh],
    feedEcHigh: ecHigh,
    source,
  };
}

function believed(...limits: readonly Ph[]): void {
  const [low, high] = quantities.ph.plausible;
  const odd = limits.find((limit) => !isPlausible(limit, "ph"));
  if (odd === undefined) return;
  const next = `it must be ${low} to ${high}; the four are pH low, pH high, EC low, EC high`;
  throw new Refusal("implausible", { quantity: "pH limit", given: odd, next });
}

function ordered(called: string, low: number, high: number): void {
  if (low < high) return;
  throw new Refusal("order", {
    quantity: called,
    given: low,
    allowed: `below the high limit ${high}; the four are pH low, pH high, EC low, EC high`,
  });
}
