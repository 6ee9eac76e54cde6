import { type Ec25, isPlausible, type Ph, quantities } from "../quantities";
import { Refusal } from "../refusal";
import { ecBands, phBands } from "./band-table";
import { feederNamed, feeders, type Feeder, type Medium, mediumNamed } from "./media";

/** The limits a pot's runoff is held against; both ends belong to the inside. */
export interface Band {
  /** Unknown when the grower gave limits of their own. */
  readonly medium: Medium | undefined;
  readonly feeder: Feeder | undefined;
  readonly ph: readonly [low: number, high: number];
  /** mS/cm at 25 C. */
  readonly ec: readonly [low: number, high: number];
  /** Where each pair of limits comes from: a key of docs/sources.md, "common practice" or "own limits". */
  readonly source: { readonly ph: string; readonly ec: string };
}

/**
 * The limits for a medium and a feeder class, from the table.
 *
 * Feeds row flags, the verdict and the stop check. The grower's own limits (`ownBand`) always win.
 *
 * Source:   src/bands/band-table.ts, a source per row
 *
 * @example bandFor("coir", "medium").ec // [2, 3.5]
 */
export function bandFor(medium: Medium, feeder: Feeder = "medium"): Band {
  const ph = phBands[medium];
  const ec = ecBands[medium][feeder];
  return { medium, feeder, ph: [ph.low, ph.high], ec: [ec.low, ec.high], source: { ph: ph.source, ec: ec.source } };
}

/** A feeder after its medium with only a space between; "medium" by itself is no medium. */
const feederAtEnd = new RegExp(`(?<=[^\\s,;/])\\s+(${feeders.join("|")})(?: feeder)?\\s*$`, "i");

/**
 * The limits that a text names: "coir", or "coir, heavy"; "coir heavy" can mean nothing else.
 *
 * @throws {Refusal} `unknown-choice`, listing the media or the feeder classes
 * @example bandNamed("peat, light").ec // [1, 2.6]
 */
export function bandNamed(text: string): Band {
  const [medium = "", feeder, ...rest] = text.replace(feederAtEnd, ", $1").split(/[,;/]/);
  if (rest.length > 0) {
    throw new Refusal("unknown-choice", { quantity: "band", given: text, allowed: 'a medium, or "medium, feeder"' });
  }
  return bandFor(mediumNamed(medium), feeder === undefined ? "medium" : feederNamed(feeder.trim()));
}

/**
 * The grower's own four limits, which win over any table.
 *
 * @throws {Refusal} `order` when a low limit is not below its high one; `implausible` pH limits, as when pH and EC changed
 *   places; `wrong-unit` EC limits beyond any feed
 * @example ownBand(ph(5.6), ph(6.4), ec25(1.5), ec25(3)).ph // [5.6, 6.4]
 */
export function ownBand(phLow: Ph, phHigh: Ph, ecLow: Ec25, ecHigh: Ec25): Band {
  ordered("pH low limit", phLow, phHigh);
  ordered("runoff EC low limit", ecLow, ecHigh);
  believed(phLow, phHigh);
  const highest = quantities.ec.plausible[1];
  if (ecHigh > highest) {
    throw new Refusal("wrong-unit", { quantity: "runoff EC high limit", given: ecHigh, unit: "mS/cm", allowed: `mS/cm up to ${highest}` });
  }
  const source = { ph: "own limits", ec: "own limits" };
  return { medium: undefined, feeder: undefined, ph: [phLow, phHigh], ec: [ecLow, ecHigh], source };
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
  throw new Refusal("order", { quantity: called, given: low, allowed: `below the high limit ${high}; the four are pH low, pH high, EC low, EC high` });
}
