import { Refusal } from "../refusal";
import { type Band, bandFor } from "./band";
import { feeders, samples } from "./limits";
import { type Meaning, meaningOf, tidy } from "./media";
import { media } from "./media-table";

/**
 * The limits that a text names: "coir", "coir, heavy", "peat, medium, pour-through"; feeder and sample in any order,
 * and without commas where the words can mean nothing else.
 *
 * @throws {Refusal} `unknown-choice`, listing the media, the feeder classes or the samples; also for a thing named
 *   twice
 * @example bandNamed("peat, light").ec // [0.8, 2.6]
 */
export function bandNamed(text: string): Band {
  const parts = text.split(/[,;]|\s\/\s|(?<!v)\/(?!v)/).filter((part) => part.trim() !== "");
  let named: Meaning = {};
  for (const meaning of parts.flatMap((part, place) => meaningsIn(part, place))) named = together(named, meaning, text);
  const { medium, feeder, sample } = named;
  if (medium === undefined)
    throw new Refusal("unknown-choice", { quantity: "medium", given: text.trim(), allowed: media.join(", ") });
  return bandFor(medium, feeder ?? "medium", sample ?? "drain");
}

/** What one part between commas says: as a whole, or word group by word group, the longest first. */
function meaningsIn(part: string, place: number): Meaning[] {
  const words = tidy(part).split(" ");
  const found: Meaning[] = [];
  for (let start = 0; start < words.length; ) {
    const length = longestKnown(words.slice(start));
    if (length === 0) throw unknown(part, place);
    found.push(meaningOf(words.slice(start, start + length).join(" ")));
    start += length;
  }
  return found;
}

function longestKnown(words: readonly string[]): number {
  for (let length = words.length; length > 0; length--) {
    if (Object.values(meaningOf(words.slice(0, length).join(" "))).some((each) => each !== undefined)) return length;
  }
  return 0;
}

function unknown(part: string, place: number): Refusal {
  const given = part.trim();
  if (place === 0) return new Refusal("unknown-choice", { quantity: "medium", given, allowed: media.join(", ") });
  return new Refusal("unknown-choice", {
    quantity: "feeder",
    given,
    allowed: `${feeders.join(", ")}; or how the sample was taken: ${samples.join(", ")}`,
  });
}

/** Both meanings in one; the same thing named in two ways is a question, not a choice. */
function together(first: Meaning, second: Meaning, text: string): Meaning {
  const twice = (["medium", "feeder", "sample"] as const).find((key) => {
    const [a, b] = [first[key], second[key]];
    return a !== undefined && b !== undefined && a !== b;
  });
  if (twice !== undefined)
    throw new Refusal("unknown-choice", {
      quantity: "band",
      given: text,
      allowed: `one ${twice}; as in "medium, feeder, sample"`,
    });
  return {
    medium: first.medium ?? second.medium,
    feeder: first.feeder ?? second.feeder,
    sample: first.sample ?? second.sample,
  };
}
