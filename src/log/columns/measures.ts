import { measureOf } from "../../cells/units";
import { type HeaderMeaning } from "./header-meaning";
import { type Concept } from "./header-words";

export type Measure = "EC" | "pH" | "volume" | "temperature" | "humidity";

/** The measures that a header names, or its unit where no word does. */
export function measuresIn({ concepts, unit, strangers }: HeaderMeaning): Measure[] {
  const named: Measure[] = [];
  if (concepts.has("ec") || concepts.has("tds") || concepts.has("cf")) named.push("EC");
  if (concepts.has("ph")) named.push("pH");
  if (concepts.has("temperature")) named.push("temperature");
  if (concepts.has("humidity")) named.push("humidity");
  if (named.length > 0) return named;
  if (concepts.has("volume")) return ["volume"];
  const byUnit = unit === undefined ? undefined : measureOf(unit);
  if (unit === "ppm" && concepts.has("element")) return [];
  const sure = byUnit === "EC" && (unit !== "ppm" || concepts.has("device"));
  return byUnit !== undefined && byUnit !== "humidity" && (sure || (strangers === 0 && !concepts.has("vessel")))
    ? [byUnit]
    : [];
}

/** Words that say more than a measure: what is left when the other side is taken is no evidence for such a column. */
const speaking: readonly Concept[] = [
  "runoff",
  "input",
  "medium",
  "vessel",
  "tank",
  "place",
  "device",
  "moment",
  "feed",
];

/** Whether a column names its measure and nothing else at all; a volume of one plant or area is another measure. */
export const isBare = ({ concepts, strangers, numbered, unit }: HeaderMeaning): boolean =>
  strangers === 0 && !numbered && unit !== "each" && !speaking.some((concept) => concepts.has(concept));
