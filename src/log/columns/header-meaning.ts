import { plain } from "../../cells/text";
import { findUnit, type WrittenUnit } from "../../cells/units";
import { dateOrderPatterns, yearFirstPattern } from "../dates/date-words";
import { type DateOrder } from "../reading";
import { withoutTargets } from "./header-targets";
import { type Concept, headerWords } from "./header-words";

/** What the words over a column say, before anything is made of it. */
export interface HeaderMeaning {
  readonly concepts: ReadonlySet<Concept>;
  readonly unit: WrittenUnit | undefined;
  readonly scale: number | undefined;
  /** How many words are in no table. */
  readonly strangers: number;
  /** A figure of its own: "EC 2", "pH (1)". It may tell meters apart, or pots, or waters. */
  readonly numbered: boolean;
  readonly dateOrder: DateOrder | undefined;
}

const dictionary: ReadonlyMap<string, readonly Concept[]> = dictionaryOf(headerWords);

function dictionaryOf(tables: Readonly<Record<Concept, readonly string[]>>): Map<string, Concept[]> {
  const found = new Map<string, Concept[]>();
  for (const [concept, words] of Object.entries(tables) as [Concept, readonly string[]][]) {
    for (const word of words) found.set(word, [...(found.get(word) ?? []), concept]);
  }
  return found;
}

/** `runoffEC`, `pHin`, `run-off`, `E.C.`: words grown together or torn apart, put right before the case is lost. */
const apart = (text: string): string =>
  text
    .replace(/run[\s-]+off/gi, "runoff")
    .replace(/pour[\s-]*(?:through|thru)/gi, "pourthrough")
    .replace(/root[\s-]+zone/gi, "rootzone")
    .replace(/set[\s-]+point/gi, "setpoint")
    .replace(/top(?:ped|ping)?[\s-]+(?:up|off)/gi, "topup")
    .replace(/new[\s-]+(?:growth|leaves)/gi, "newgrowth")
    .replace(/roots?[\s-]+(?:look|colou?r|health|score|condition|rating)|^\s*roots?\s*(?=$|\()/gi, "rootlook")
    .replace(/\b([ecp])\.\s?([ceh])\.?(?![\p{L}])/giu, " $1$2 ")
    .replace(/\u0394/g, " \u0394 ")
    .replace(/pH/g, " ph ")
    .replace(/(?<![A-Z])(?:EC|TDS|RH|CF)(?![A-Z])/g, (word) => ` ${word} `)
    .replace(/([a-z]{2})([A-Z])(?=[a-z])/g, "$1 $2");

/** A side is named; "in" before it is the small word: "EC in runoff", "pH in drain water". */
const smallIn =
  /\b(?:in|im|en|nel|na|w)\s+(?:the\s+|der\s+|het\s+|el\s+|la\s+)?(?=(?:runoff|drain|leachate|ablauf|effluent|outflow|uscita|salida))/g;
const ordinals = /\b(?:7|seven)[\s-]?day\b|\b\d+(?:st|nd|rd|th)\b/g;

/** Reads the words over one column, units included; targets and limits are read past. */
export function headerMeaning(header: string): HeaderMeaning {
  const text = withoutTargets(header).replace(yearFirstPattern, "");
  const lower = text.toLowerCase();
  const spelledOrder = dateOrderOf(lower);
  const named = spelledOrder === undefined ? apart(text) : lower.replace(/[a-z]+([./\s-][a-z]+){2}/, "");
  const { unit, scale, rest } = findUnit(named);
  // "EC in mS/cm" speaks of a unit, "EC in" and "In (mL)" of a side.
  const bare = rest.replace(/\bin\s+§/g, " ").replace(smallIn, " ").replace(ordinals, " ");
  const concepts = new Set<Concept>();
  let strangers = 0;
  for (const word of bare.match(/\p{L}+/gu) ?? []) {
    const found = conceptsOf(word);
    if (found === undefined) strangers += 1;
    found?.forEach((concept) => concepts.add(concept));
  }
  return {
    concepts,
    unit,
    scale,
    strangers,
    numbered: /(?<![\d.,:])\d{1,2}(?![\d.,:])/.test(bare),
    dateOrder: spelledOrder,
  };
}

/** What a word speaks of; one that is in no table may be two that are: "drainmenge", "druppelwater". */
function conceptsOf(word: string): readonly Concept[] | undefined {
  const known = dictionary.get(word);
  if (known !== undefined) return known;
  for (let at = shortestPart; at <= word.length - shortestPart; at += 1) {
    const [first, second] = [dictionary.get(word.slice(0, at)), dictionary.get(word.slice(at))];
    if (first !== undefined && second !== undefined) return [...first, ...second];
  }
  return undefined;
}

/** Of the two words that are grown together, each has two letters at least. */
const shortestPart = 2;

function dateOrderOf(text: string): DateOrder | undefined {
  if (dateOrderPatterns["day first"].test(text)) return "day first";
  return dateOrderPatterns["month first"].test(text) ? "month first" : undefined;
}

/** The words of a header as they are compared, for a repeat of it in other words. */
export const headerText = (text: string): string => plain(withoutTargets(text));

/** Whether of all words for what goes in only "water" is said. */
export const namesOnlyWater = (text: string): boolean => {
  const said = (plain(text).match(/\p{L}+/gu) ?? []).map((word) => conceptsOf(word) ?? []);
  const ofInput = said.filter((concepts) =>
    (["input", "feed", "tank"] as const).some((concept) => concepts.includes(concept)),
  );
  return ofInput.length > 0 && ofInput.every((concepts) => concepts.includes("anyWater"));
};
