import { Refusal } from "../refusal";

/** What the roots stand in. */
export const media = ["coir", "peat", "bark", "mineral wool", "inert", "soil"] as const;
export type Medium = (typeof media)[number];

/** How much feed the plant takes. */
export const feeders = ["light", "medium", "heavy"] as const;
export type Feeder = (typeof feeders)[number];

/** Other words of the trade for the same things. */
const mediumWords: Readonly<Record<string, Medium>> = {
  "coco coir": "coir",
  "coconut coir": "coir",
  "coconut fibre": "coir",
  "coconut fiber": "coir",
  "peat mix": "peat",
  "peat moss": "peat",
  soilless: "peat",
  "pine bark": "bark",
  "rock wool": "mineral wool",
  "stone wool": "mineral wool",
  "clay pebbles": "inert",
  "expanded clay": "inert",
  perlite: "inert",
  sand: "inert",
  gravel: "inert",
  loam: "soil",
};

const tidy = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/g, " ").replace(/(\S)wool$/, "$1 wool");

/** The medium a word names. @throws {Refusal} `unknown-choice`, listing the media */
export function mediumNamed(text: string): Medium {
  const word = tidy(text);
  const found = media.find((medium) => medium === word) ?? mediumWords[word];
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "medium", given: text, allowed: media.join(", ") });
}

/** The feeder class a word names. @throws {Refusal} `unknown-choice`, listing the classes */
export function feederNamed(text: string): Feeder {
  const word = tidy(text).replace(/ feeder$/, "");
  const found = feeders.find((feeder) => feeder === word);
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "feeder", given: text, allowed: feeders.join(", ") });
}
