import { Refusal } from "../refusal";
import { feeders, type Feeder, samples, type Sample } from "./limits";
import { media, mediaTable, type Medium } from "./media-table";

/**
 * Lower case, hyphens and doubled spaces as one space, "stonewool" as two words: the form in which the words are
 * compared.
 */
export const tidy = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, " ")
    .replaceAll(/(\S)wool\b/g, "$1 wool")
    .trim();

/** A Map, so that an inherited name such as "constructor" is an unknown word like any other. */
const mediumWords: ReadonlyMap<string, Medium> = new Map(
  media.flatMap((medium) => [medium, ...mediaTable[medium].words].map((word) => [tidy(word), medium] as const)),
);

const feederWords: ReadonlyMap<string, Feeder> = new Map(
  feeders.flatMap(
    (feeder) =>
      [
        [feeder, feeder],
        [`${feeder} feeder`, feeder],
      ] as const,
  ),
);

const otherSampleWords = {
  drain: ["runoff", "run off", "drainage", "leachate", "drain water", "spot drain", "solution", "effluent"],
  "pour-through": ["pourthrough", "pourthru", "pour thru", "pt"],
  "1:2 extract": ["1:2", "1 to 2", "1 in 2", "1:2 v/v", "1:2 water extract", "1:2 suspension"],
  "saturated extract": [
    "sme",
    "saturated",
    "saturated medium extract",
    "saturated media extract",
    "saturated paste",
    "saturated paste extract",
    "saturation extract",
  ],
} as const satisfies Record<Sample, readonly string[]>;

const sampleWords: ReadonlyMap<string, Sample> = new Map(
  samples.flatMap((sample) => [sample, ...otherSampleWords[sample]].map((word) => [tidy(word), sample] as const)),
);

/** What a word, or several, can mean in the name of a band. */
export interface Meaning {
  readonly medium?: Medium | undefined;
  readonly feeder?: Feeder | undefined;
  readonly sample?: Sample | undefined;
}

/** The meaning of a word by itself; empty for one that is not known. */
export function meaningOf(text: string): Meaning {
  const word = tidy(text);
  return { medium: mediumWords.get(word), feeder: feederWords.get(word), sample: sampleWords.get(word) };
}

/** The medium a word names. @throws {Refusal} `unknown-choice`, listing the media */
export const mediumNamed = (text: string): Medium =>
  known(meaningOf(text).medium, { quantity: "medium", given: text, allowed: media.join(", ") });

/** The feeder class a word names. @throws {Refusal} `unknown-choice`, listing the classes */
export const feederNamed = (text: string): Feeder =>
  known(meaningOf(text).feeder, { quantity: "feeder", given: text, allowed: feeders.join(", ") });

/** How a sample was taken. @throws {Refusal} `unknown-choice`, listing the ways */
export const sampleNamed = (text: string): Sample =>
  known(meaningOf(text).sample, { quantity: "sample", given: text, allowed: samples.join(", ") });

function known<T>(
  found: T | undefined,
  details: { readonly quantity: string; readonly given: string; readonly allowed: string },
): T {
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", details);
}
