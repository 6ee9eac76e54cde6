import { type Conclusion } from "./conclusion";
import { feedThatFits } from "./course/feed-target";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { feedSays } from "./says/other-says";
import { phSays } from "./says/ph-says";
import { type Cause } from "./words";

/**
 * What is poured, where it is out while the pot does not show it, or was not read; `chosen` where a strong feed is
 * meant.
 */
export function inputSteps(
  facts: Facts,
  chosen: boolean,
): { readonly steps: Conclusion["steps"]; readonly causes: readonly Cause[] } {
  const { feed, band } = facts;
  const isPhOut = feed.phSide === "low" || feed.phSide === "high";
  const isStrong = feed.tooStrong && !chosen && feed.ec !== undefined;
  const to = feedThatFits(facts);
  return {
    steps: [
      ...(isPhOut && feed.ph !== undefined
        ? [step("mend the input pH", "at the next watering", phSays.mendInput(feed.ph, band.phAim), { ph: band.phAim })]
        : []),
      ...(isStrong
        ? [step("lower the feed", "at the next watering", feedSays.lowerBeforeItShows(feed.ec, to), { ec: to })]
        : []),
    ],
    causes: [
      ...(isPhOut ? (["input pH out of band"] as const) : []),
      ...(isStrong ? (["feed too strong"] as const) : []),
    ],
  };
}
