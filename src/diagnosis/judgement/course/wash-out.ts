import { type CourseStep } from "../pot-judgement";
import { type Cause } from "../words";
import { type Facts } from "../facts";
import { type SaltFound } from "../salt-found";
import { wantedOnSaltyWater, wantedRunoff } from "../limits";
import { saltSays } from "../says/salt-says";
import { measureNext, readingsAfter, weakStartAfterFlush } from "./common-steps";
import { fullFeed } from "./feed-target";
import { flushFigures, weakLiquid } from "./flush-figures";
import { step } from "./step";
import { isFeedAtFault, weakerFeed } from "./weaker-feed";
import { litresFor, runoffSteps } from "./runoff-steps";

/**
 * Long high and steady with clean growth, or falling as it is, is brought down by weak waterings; so is a little salt,
 * unless the plant fails.
 */
export const isWashedOut = (salt: SaltFound): boolean =>
  !salt.harmlessSoFar && !salt.falling && (salt.degree === "strong" || salt.degree === "extreme");

export function washed(facts: Facts, salt: SaltFound, causes: readonly Cause[]): CourseStep[] {
  const figures = flushFigures(facts);
  const isRebound = causes.includes("rebound after a flush");
  const waits = salt.sure === "sole";
  const says = salt.sure === "sole" ? saltSays.flushIfAgreed : isRebound ? saltSays.flushAgain : saltSays.flush;
  const flush = step("flush", waits ? "within the hour" : "now", says(figures), {
    ph: figures.ph,
    ec: figures.target,
    litres: figures.most,
  });
  const isFeed = isFeedAtFault(causes);
  const isOnRamp = facts.phase.phase === "after a flush";
  const lower = isFeed ? weakerFeed(facts, causes) : [];
  return [
    ...lower,
    flush,
    ...(lower.length > 0 || isOnRamp ? [] : [startAfter(facts)]),
    ...readingsAfter(),
    ...runoffSteps(facts, causes),
  ];
}

/** A weak start after the flush; where only water goes in, what lies in the pot feeds by itself. */
const startAfter = (facts: Facts): CourseStep =>
  facts.feed.ec === undefined && facts.feed.isWaterNow
    ? step("lower the feed", "at the next watering", saltSays.clearWaterOnly, { share: 0 })
    : weakStartAfterFlush(facts, fullFeed(facts));

/** What is being done works: it is kept on, and no flush while it falls. */
export function keptOn(facts: Facts, causes: readonly Cause[]): CourseStep[] {
  const isFeed = facts.feed.nearLimit || isFeedAtFault(causes);
  const keep = step("let more run off", "at the next watering", saltSays.keepOn(facts.ec?.values ?? []));
  return [...(isFeed ? weakerFeed(facts, causes) : []), keep, measureNext()];
}

export function thinned(facts: Facts, causes: readonly Cause[]): CourseStep[] {
  const { water, feed } = facts;
  const wanted = feed.waterIsSalty ? wantedOnSaltyWater : wantedRunoff;
  const share = Math.min(wantedOnSaltyWater, Math.max(wanted, water.share ?? 0));
  const lower = isFeedAtFault(causes) || feed.ec === undefined ? weakerFeed(facts, causes) : [];
  const isFeed = isFeedAtFault(causes) && lower.length > 0;
  const weak = step(
    "let more run off",
    "at the next watering",
    saltSays.weakWaterings(share, litresFor(water.kept, share), weakLiquid(facts)),
    { share, litres: litresFor(water.kept, share) },
  );
  const often = causes.includes("too little water")
    ? [step("water more often", "at the next watering", saltSays.moreOften)]
    : [];
  return [
    ...lower,
    ...(isFeed ? [] : [weak]),
    ...often,
    measureNext(),
  ];
}

