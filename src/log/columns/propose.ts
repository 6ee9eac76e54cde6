import { type HeaderMeaning } from "./header-meaning";
import { type LogQuantity } from "../log";
import { measureOf } from "../../cells/units";
import { type Concept } from "./header-words";

export type Measure = "EC" | "pH" | "volume" | "temperature" | "humidity";

/** What a column's words make it: a quantity, or part of one and the choices that are left. */
export interface Proposal {
  readonly quantity: LogQuantity | undefined;
  readonly measure: Measure | undefined;
  readonly why: string;
  /** The quantities it could be; empty when nothing is to be asked. */
  readonly choices: readonly LogQuantity[];
}

type Side = "input" | "runoff" | "both" | undefined;

const settled = (quantity: LogQuantity, why: string, measure?: Measure): Proposal => ({ quantity, measure, why, choices: [] });
const inWords = "the words over it";

/** What a column is, from its words alone. */
export function propose(meaning: HeaderMeaning): Proposal {
  const has = (concept: Concept): boolean => meaning.concepts.has(concept);
  if (has("notes")) return settled("notes", inWords);
  const measures = measuresIn(meaning);
  if (has("noReading") || meaning.unit === "mV" || meaning.unit === "per") return settled("other", "not a reading of the log");
  if (has("uncompensated")) return settled("other", "not corrected to 25 C: make it EC at 25 C first");
  if (measures.length > 1) return settled("other", `names ${measures.join(" and ")} in one column`);
  const [measure] = measures;
  if (measure !== undefined) return clashes(measure, meaning) ? settled("other", `its unit is not one of ${measure}`) : measured(measure, meaning);
  if (has("date")) return settled("date", inWords);
  if (has("time")) return settled("time", inWords);
  if (has("vessel")) return settled("vessel", inWords);
  if (has("medium")) return settled("other", "the medium is chosen beside the log");
  return sideOnly(meaning);
}

function measuresIn({ concepts, unit, strangers }: HeaderMeaning): Measure[] {
  const named: Measure[] = [];
  if (concepts.has("ec") || concepts.has("tds")) named.push("EC");
  if (concepts.has("ph")) named.push("pH");
  if (concepts.has("temperature")) named.push("temperature");
  if (concepts.has("humidity")) named.push("humidity");
  if (named.length > 0) return named;
  if (concepts.has("volume")) return ["volume"];
  const byUnit = unit === undefined ? undefined : measureOf(unit);
  const sure = byUnit === "EC" && unit !== "ppm";
  return byUnit !== undefined && byUnit !== "humidity" && (sure || (strangers === 0 && !concepts.has("vessel"))) ? [byUnit] : [];
}

const clashes = (measure: Measure, { unit }: HeaderMeaning): boolean => unit !== undefined && measureOf(unit) !== measure;

function sideOf({ concepts }: HeaderMeaning): Side {
  if (concepts.has("runoff")) return concepts.has("input") ? "both" : "runoff";
  return concepts.has("input") || concepts.has("feed") || concepts.has("tank") ? "input" : undefined;
}

function measured(measure: Measure, meaning: HeaderMeaning): Proposal {
  const has = (concept: Concept): boolean => meaning.concepts.has(concept);
  if (has("elsewhere")) return settled("other", "measured on the leaf or outdoors");
  if (measure === "humidity") return has("medium") ? settled("other", "moisture of the medium") : settled("humidity", inWords, measure);
  const side = sideOf(meaning);
  if (measure === "temperature") return temperature(side, meaning);
  const choices = [`input ${measure}`, `runoff ${measure}`] as const;
  // What is in the tank is what goes in, but how much is in it is not what was poured.
  if (measure === "volume" && has("tank")) return { quantity: undefined, measure, why: "a tank's volume is not what was poured", choices };
  if (side === "input" || side === "runoff") return settled(`${side} ${measure}`, inWords, measure);
  return { quantity: undefined, measure, why: side === "both" ? "names both sides" : "input or runoff is not said", choices };
}

function temperature(side: Side, { concepts }: HeaderMeaning): Proposal {
  if (concepts.has("air")) return settled("air temperature", inWords, "temperature");
  if (concepts.has("medium")) return settled("other", "temperature of the medium");
  if (side !== undefined) return settled("solution temperature", inWords, "temperature");
  return { quantity: undefined, measure: "temperature", why: "of the air or of the solution is not said", choices: ["solution temperature", "air temperature"] };
}

function sideOnly(meaning: HeaderMeaning): Proposal {
  const side = sideOf(meaning);
  if (side !== "input" && side !== "runoff") return settled("other", "not a column of the log");
  if (meaning.unit !== undefined || meaning.strangers > 0) return settled("other", "not a reading of the log");
  return { quantity: undefined, measure: undefined, why: "what was measured is not said", choices: [`${side} EC`, `${side} pH`, `${side} volume`] };
}
