import { isBelow } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Conclusion } from "./conclusion";
import { feedThatFits } from "./course/feed-target";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { farPh } from "./limits";
import { feedSays } from "./says/other-says";
import { phSays } from "./says/ph-says";
import { type Cause } from "./words";

/** What is poured stands outside in pH: named at once, and far outside the pen is tried on it first. */
export function inputPhSteps(facts: Facts): Conclusion["steps"] {
  const { ph } = facts.feed;
  const isDoubted = ph !== undefined && isInputPhFar(facts);
  return [...(isDoubted ? [step("check the meter", "now", phSays.penOnFeed(ph))] : []), ...mendInputPh(facts)];
}

/** So far outside that pouring it is harm by itself. */
export function isInputPhFar({ feed: { ph, phSide }, band: { ph: [low, high] } }: Facts): boolean {
  if (ph === undefined || phSide === undefined || phSide === "inside") return false;
  return !isBelow(phSide === "low" ? low - ph : ph - high, farPh, quantities.ph.resolution);
}

/** A pot so far below what is poured is soured by the feed's nitrogen, and not by the pH poured. Common practice. */
const pastInput = 0.6;

/** The pot has gone further down than what is poured could take it. */
export function isSouredWithin(facts: Facts): boolean {
  const { feed, ph } = facts;
  if (feed.ph === undefined || ph?.side !== "low" || isInputPhFar(facts)) return false;
  return !isBelow(feed.ph - ph.latest, pastInput, quantities.ph.resolution);
}

/** What is poured stands on the other side of the band than the pot, and so pulls it back. */
function isInputCounter({ feed, ph }: Facts): boolean {
  return (feed.phSide === "low" && ph?.side === "high") || (feed.phSide === "high" && ph?.side === "low");
}

/** What is poured has to be mended: it is out, and not merely pulling the pot back. */
export function isInputPhWrong(facts: Facts): boolean {
  const isOut = facts.feed.phSide === "low" || facts.feed.phSide === "high";
  return isOut && (!isInputCounter(facts) || isInputPhFar(facts));
}

/**
 * The next feed at the pH that the pot wants; at the edge of the band where the pot stands out on the other side.
 */
export function mendInputPh(facts: Facts): Conclusion["steps"] {
  const { feed, band } = facts;
  if (feed.ph === undefined || !isInputPhWrong(facts)) return [];
  const edge = feed.phSide === "low" ? band.ph[0] : band.ph[1];
  const ph = isInputCounter(facts) ? edge : band.phAim;
  return [step("mend the input pH", "at the next watering", phSays.mendInput(feed.ph, ph), { ph })];
}

/**
 * What is poured, where it is out while the pot does not show it, or was not read; `chosen` where a strong feed is
 * meant.
 */
export function inputSteps(
  facts: Facts,
  chosen: boolean,
): { readonly steps: Conclusion["steps"]; readonly causes: readonly Cause[] } {
  const { feed } = facts;
  const phSteps = inputPhSteps(facts);
  const isStrong = feed.tooStrong && !chosen && feed.ec !== undefined;
  const to = feedThatFits(facts);
  return {
    steps: [
      ...phSteps,
      ...(isStrong
        ? [step("lower the feed", "at the next watering", feedSays.lowerBeforeItShows(feed.ec, to), { ec: to })]
        : []),
    ],
    causes: [
      ...(phSteps.length > 0 ? (["input pH out of band"] as const) : []),
      ...(isStrong ? (["feed too strong"] as const) : []),
    ],
  };
}
