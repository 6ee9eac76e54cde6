import { type DateOrder } from "../reading";
import { findUnit, type WrittenUnit } from "../../cells/units";
import { dateOrderPatterns } from "../dates/date-words";
import { compoundWords, type Concept, headerWords } from "./header-words";

/** What the words over a column say, before anything is made of it. */
export interface HeaderMeaning {
  readonly concepts: ReadonlySet<Concept>;
  readonly unit: WrittenUnit | undefined;
  readonly scale: number | undefined;
  /** Words that are in no table. */
  readonly strangers: number;
  readonly dateOrder: DateOrder | undefined;
}

const dictionary: ReadonlyMap<string, readonly Concept[]> = new Map([
  ...Object.entries(headerWords).flatMap(([concept, words]) =>
    words.split(" ").map((word) => [word, [concept as Concept]] as const),
  ),
  ...Object.entries(compoundWords),
]);

/** `runoffEC`, `pHin`, `run-off`: words grown together or torn apart, put right before the case is lost. */
const apart = (text: string): string =>
  text
    .replace(/run[\s-]+off/gi, "runoff")
    .replace(/pour[\s-]+through/gi, "pourthrough")
    .replace(/root[\s-]+zone/gi, "rootzone")
    .replace(/pH/g, " ph ")
    .replace(/(?<![A-Z])(?:EC|TDS|RH)(?![A-Z])/g, (word) => ` ${word} `)
    .replace(/([a-z]{2})([A-Z])(?=[a-z])/g, "$1 $2");

/** Reads the words over one column, units included. */
export function headerMeaning(text: string): HeaderMeaning {
  const spelledOrder = dateOrderOf(text.toLowerCase());
  const { unit, scale, rest } = findUnit(spelledOrder === undefined ? apart(text) : text.toLowerCase().replace(/[a-z]+([./\s-][a-z]+){2}/, ""));
  // "EC in mS/cm" speaks of a unit, "EC in" and "In (mL)" of a side.
  const words = rest.replace(/\bin\s+§/g, " ").match(/[a-z]+/g) ?? [];
  const concepts = new Set<Concept>();
  let strangers = 0;
  for (const word of words) {
    const found = dictionary.get(word);
    if (found === undefined) strangers += 1;
    found?.forEach((concept) => concepts.add(concept));
  }
  return { concepts, unit, scale, strangers, dateOrder: spelledOrder };
}

function dateOrderOf(text: string): DateOrder | undefined {
  if (dateOrderPatterns["day first"].test(text)) return "day first";
  return dateOrderPatterns["month first"].test(text) ? "month first" : undefined;
}
