import { measureOf } from "../../cells/units";
import { type LogQuantity } from "../log";
import { type HeaderMeaning } from "./header-meaning";
import { type Concept } from "./header-words";
import { type Measure, measuresIn } from "./measures";

/** What a column's words make it: a quantity, or part of one and the choices that are left. */
export interface Proposal {
  readonly quantity: LogQuantity | undefined;
  readonly measure: Measure | undefined;
  readonly why: string;
  /** The quantities it could be; empty when nothing is to be asked. */
  readonly choices: readonly LogQuantity[];
}

type Side = "input" | "runoff" | "both" | undefined;

const settled = (quantity: LogQuantity, why: string, measure?: Measure): Proposal =>
  ({ quantity, measure, why, choices: [] });
const open = (measure: Measure | undefined, why: string, choices: readonly LogQuantity[]): Proposal =>
  ({ quantity: undefined, measure, why, choices });
const inWords = "the words over it";

/**
 * Words after which a column is never a reading of the log, whatever else stands there; in the order in which they
 * speak.
 */
const neverRead: readonly (readonly [Concept, string])[] = [
  ["noReading", "not a reading of the log"],
  ["elsewhere", "measured in the plant or outdoors"],
  ["method", "another method than the runoff"],
  ["uncompensated", "not corrected to 25 C: make it EC at 25 C first"],
  ["sourceWater", "the water before any feed is in it"],
];

/** What a column is, from its words alone. */
export function propose(meaning: HeaderMeaning): Proposal {
  const has = (concept: Concept): boolean => meaning.concepts.has(concept);
  if (has("notes")) return settled("notes", inWords);
  if (meaning.unit === "mV" || meaning.unit === "per") return settled("other", "not a reading of the log");
  const measures = measuresIn(meaning);
  const never = neverRead.find(([concept]) => has(concept) && !(concept === "sourceWater" && measures.length === 0));
  if (never !== undefined) return settled("other", never[1]);
  const ofTank = tankKeeping(meaning, measures);
  if (ofTank !== undefined) return settled("other", ofTank);
  if (measures.length > 1) return settled("other", `names ${measures.join(" and ")} in one column`);
  const [measure] = measures;
  if (measure !== undefined)
    return clashes(measure, meaning)
      ? settled("other", `its unit is not one of ${measure}`)
      : measured(measure, meaning);
  return unmeasured(meaning);
}

/**
 * How full a tank is and what was added to it: neither was poured into a pot. A level of the runoff may be how much ran
 * off.
 */
function tankKeeping({ concepts }: HeaderMeaning, measures: readonly Measure[]): string | undefined {
  const [measure = "volume"] = measures;
  if (measure !== "volume" || concepts.has("runoff")) return undefined;
  if (concepts.has("topUp")) return "added to the tank, not to the pot";
  return concepts.has("level") ? "how full the tank is" : undefined;
}

const plantLooks = [
  ["newGrowth", "new growth"], ["posture", "posture"], ["symptoms", "spread of symptoms"], ["rootLook", "roots"],
] as const satisfies readonly (readonly [Concept, LogQuantity])[];

/** Dates, names and what else is no figure of a meter. */
function unmeasured(meaning: HeaderMeaning): Proposal {
  const has = (concept: Concept): boolean => meaning.concepts.has(concept);
  if (meaning.unit === "each")
    return open("volume", "a volume of one plant or area is not the pot's", ["input volume", "runoff volume"]);
  const look = plantLooks.find(([concept]) => has(concept));
  if (look !== undefined && meaning.unit === undefined) return settled(look[1], inWords);
  if (has("date")) return settled("date", inWords);
  if (has("time")) return settled("time", inWords);
  if (has("vessel") && meaning.unit === undefined) return settled("vessel", inWords);
  if (has("medium")) return settled("other", "the medium is chosen beside the log");
  if (has("place")) return settled("other", "a kind or a place");
  return sideOnly(meaning);
}

const clashes = (measure: Measure, { unit }: HeaderMeaning): boolean =>
  unit !== undefined && unit !== "each" && measureOf(unit) !== measure;

function sideOf({ concepts }: HeaderMeaning): Side {
  if (concepts.has("runoff")) return concepts.has("input") ? "both" : "runoff";
  return concepts.has("input") || concepts.has("feed") || concepts.has("tank") ? "input" : undefined;
}

function measured(measure: Measure, meaning: HeaderMeaning): Proposal {
  const has = (concept: Concept): boolean => meaning.concepts.has(concept);
  if (measure === "humidity")
    return has("medium") ? settled("other", "moisture of the medium") : settled("humidity", inWords, measure);
  const side = sideOf(meaning);
  if (measure === "temperature") return temperature(side, meaning);
  const choices = [`input ${measure}`, `runoff ${measure}`] as const;
  if (has("extract")) {
    return measure === "EC" || measure === "pH"
      ? open(measure, "of an extract of the medium: as the runoff's it is held against the limits of that sample", [
          `runoff ${measure}`,
        ])
      : settled("other", "another method than the runoff");
  }
  if (has("moment")) return open(measure, "before or after something: which of them the pot got is not said", choices);
  if (meaning.unit === "each") return open(measure, "a volume of one plant or area is not the pot's", choices);
  // What is in the tank is what goes in, but how much is in it is not what was poured.
  if (measure === "volume" && has("tank")) return open(measure, "a tank's volume is not what was poured", choices);
  // "EC in slab", "EC in pot": the little word is no side.
  const littleWord = (has("medium") || has("vessel")) && has("input") && !has("feed");
  if (littleWord) return open(measure, "input, or measured in the pot, is not said", choices);
  if (side === "input" || side === "runoff") return settled(`${side} ${measure}`, inWords, measure);
  return open(measure, side === "both" ? "names both sides" : "input or runoff is not said", choices);
}

function temperature(side: Side, { concepts }: HeaderMeaning): Proposal {
  if (concepts.has("air")) return settled("air temperature", inWords, "temperature");
  if (concepts.has("medium")) return settled("other", "temperature of the medium");
  if (side !== undefined) return settled("solution temperature", inWords, "temperature");
  return open("temperature", "of the air or of the solution is not said", ["solution temperature", "air temperature"]);
}

function sideOnly(meaning: HeaderMeaning): Proposal {
  const side = sideOf(meaning);
  if (side !== "input" && side !== "runoff") return settled("other", "not a column of the log");
  if (meaning.unit !== undefined || meaning.strangers > 0) return settled("other", "not a reading of the log");
  return open(undefined, "what was measured is not said", [`${side} EC`, `${side} pH`, `${side} volume`]);
}
