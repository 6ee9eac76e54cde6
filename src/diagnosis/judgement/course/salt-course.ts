import { type CourseStep } from "../pot-judgement";
import { type Cause } from "../words";
import { type Facts } from "../facts";
import { type SaltFound } from "../salt";
import { isExtract, wantedOnSaltyWater, wantedRunoff } from "../limits";
import { measureSays } from "../says/other-says";
import { saltSays } from "../says/salt-says";
import {
  easeLoad,
  isDriedOut,
  lookAtRoots,
  measureNext,
  measureTwice,
  readingsAfter,
  rewetted,
  weakStartAfterFlush,
} from "./common-steps";
import { feedThatFits, fullFeed } from "./feed-target";
import { flushFigures } from "./flush-figures";
import { step } from "./step";

/**
 * What to do about salt, in order: make sure, take away what feeds it, wash it out or thin it, and keep it from coming
 * back.
 *
 * Errs to the weaker act: a dry pot is wetted and read first, slow-release is asked about first, soil is tested first.
 */
export function saltCourse(facts: Facts, salt: SaltFound, causes: readonly Cause[]): CourseStep[] {
  const { band, plant } = facts;
  if (causes.includes("slow-release in the medium")) {
    const release = releaseCourse(facts, salt, causes);
    if (release !== undefined) return release;
  }
  if (band.medium === "soil") return soilCourse(facts, salt);
  const isDry = isDriedOut(facts);
  return [
    ...(salt.sure === "sole" ? measureTwice() : []),
    ...(plant.signs.has("crust") ? [step("take off what lies on top", "now", saltSays.takeOffTop("crust"))] : []),
    ...(isDry
      ? rewetted()
      : isWashedOut(salt)
        ? washed(facts, salt, causes)
        : salt.falling
          ? keptOn(facts, causes)
          : thinned(facts, causes)),
    ...(plant.failing || (salt.degree === "extreme" && !salt.harmlessSoFar) ? [easeLoad(facts)] : []),
    ...(plant.signs.has("brown roots") ? [lookAtRoots(facts)] : []),
  ];
}

/**
 * Long high and steady with clean growth, or falling as it is, is brought down by weak waterings; so is a little salt,
 * unless the plant fails.
 */
const isWashedOut = (salt: SaltFound): boolean =>
  !salt.harmlessSoFar && !salt.falling && (salt.degree === "strong" || salt.degree === "extreme");

function washed(facts: Facts, salt: SaltFound, causes: readonly Cause[]): CourseStep[] {
  const full = fullFeed(facts);
  const figures = flushFigures(facts);
  const isRebound = causes.includes("rebound after a flush");
  const waits = salt.sure === "sole";
  const says = salt.sure === "sole" ? saltSays.flushIfAgreed : isRebound ? saltSays.flushAgain : saltSays.flush;
  const flush = step("flush", waits ? "at the next watering" : "now", says(figures), {
    ph: figures.ph,
    ec: figures.target,
    litres: figures.most,
  });
  const weaker = weakerFeed(facts, salt, causes);
  const isFeed = causes.includes("feed too strong") || causes.includes("feed mixed wrong");
  const isOnRamp = facts.phase.phase === "after a flush";
  return [
    ...(isFeed ? weaker : []),
    flush,
    ...(isFeed || isOnRamp ? [] : [weakStartAfterFlush(facts, full)]),
    ...readingsAfter(),
    ...runoffSteps(facts, causes),
  ];
}

/** What is being done works: it is kept on, and no flush while it falls. */
function keptOn(facts: Facts, causes: readonly Cause[]): CourseStep[] {
  const isFeed = facts.feed.nearLimit || causes.includes("feed too strong") || causes.includes("feed mixed wrong");
  const keep = step("let more run off", "at the next watering", saltSays.keepOn(facts.ec?.values ?? []));
  return [...(isFeed ? weakerFeed(facts, undefined, causes) : []), keep, measureNext()];
}

function thinned(facts: Facts, causes: readonly Cause[]): CourseStep[] {
  const { water, feed } = facts;
  const share = feed.waterIsSalty ? wantedOnSaltyWater : wantedRunoff;
  const isFeed = causes.includes("feed too strong") || causes.includes("feed mixed wrong");
  const weak = step(
    "let more run off",
    "at the next watering",
    saltSays.weakWaterings(share, litresFor(water.kept, share)),
    { share, litres: litresFor(water.kept, share) },
  );
  const often = causes.includes("too little water")
    ? [step("water more often", "at the next watering", saltSays.moreOften)]
    : [];
  return [
    ...(isFeed || feed.ec === undefined ? weakerFeed(facts, undefined, causes) : []),
    ...(isFeed ? [] : [weak]),
    ...often,
    measureNext(),
  ];
}

/** Lower the feed: where it is too strong, near its limit, mixed wrong, not known, or the salt an emergency. */
function weakerFeed(facts: Facts, salt: SaltFound | undefined, causes: readonly Cause[]): CourseStep[] {
  const { feed, entries } = facts;
  const to = feedThatFits(facts);
  const lower = (when: "now" | "at the next watering", says: string, ec: number): CourseStep[] => [
    step("lower the feed", when, says, { ec, share: feed.ec === undefined ? undefined : Math.min(1, ec / feed.ec) }),
  ];
  const comesBack = entries.slice(-1).some(({ events }) => events.some(({ kind }) => kind === "topped up"));
  if (feed.mixedWrong === "strong" && feed.ec !== undefined && causes.includes("feed mixed wrong"))
    return lower("now", saltSays.wrongMix(feed.ec, to), to);
  if (causes.includes("feed too strong"))
    return lower("now", comesBack ? saltSays.topUpPlain(to) : saltSays.weakerFeed(to, feed.ec), to);
  if (feed.ec === undefined && feed.isWaterNow) return [];
  if (feed.ec === undefined) return lower("at the next watering", saltSays.unknownFeed(to), to);
  if (salt?.degree === "extreme") return lower("at the next watering", saltSays.halveFeed(feed.ec / 2), feed.ec / 2);
  return feed.nearLimit ? lower("at the next watering", saltSays.weakerFeed(to, feed.ec), to) : [];
}

/** More runoff, and more often, where too little drains; never where the feed is what is too strong. */
function runoffSteps({ water, feed }: Facts, causes: readonly Cause[]): CourseStep[] {
  if (causes.includes("feed too strong") || causes.includes("feed mixed wrong")) return [];
  const isEnough = (water.runoff === "enough" || water.runoff === "much") && !feed.waterIsSalty;
  const share = feed.waterIsSalty ? wantedOnSaltyWater : wantedRunoff;
  const litres = litresFor(water.kept, share);
  const more = isEnough
    ? []
    : [
        step("let more run off", "at the next watering", saltSays.moreRunoff(share, litres, water.share), {
          share,
          litres,
        }),
      ];
  return [
    ...more,
    ...(causes.includes("too little water")
      ? [step("water more often", "at the next watering", saltSays.moreOften)]
      : []),
  ];
}

/** Litres to pour so that this share drains of what is not kept. */
const litresFor = (kept: number | undefined, share: number): number | undefined =>
  kept === undefined || !(kept > 0) ? undefined : kept / (1 - share);

/** Slow-release: on top it is taken off and the rest follows; mixed in it is repotted; not known, it is asked. */
function releaseCourse(facts: Facts, salt: SaltFound, causes: readonly Cause[]): CourseStep[] | undefined {
  const where = releaseOf(facts);
  const clear = step("lower the feed", "at the next watering", saltSays.clearWaterOnly, { share: 0 });
  if (where === "slow-release mixed in") {
    return [
      lookAtRoots(facts),
      step("repot", "now", saltSays.repot),
      clear,
      measureNext(),
      ...(facts.plant.failing ? [easeLoad(facts)] : []),
    ];
  }
  const off = step("take off what lies on top", "now", saltSays.takeOffTop("slow-release"));
  if (where === "slow-release on top") {
    return [
      off,
      ...(isWashedOut(salt) ? washed(facts, salt, causes) : thinned(facts, causes)),
      ...(facts.plant.failing ? [easeLoad(facts)] : []),
    ];
  }
  return [
    step("look at the plant", "now", saltSays.askRelease),
    clear,
    measureNext(),
    ...(facts.plant.failing ? [easeLoad(facts)] : []),
  ];
}

const releases = ["slow-release mixed in", "slow-release on top", "slow-release"] as const;

/** Where slow-release fertiliser lies, by any note of the log; the latest note wins. */
export function releaseOf({ entries }: Facts): (typeof releases)[number] | undefined {
  for (let at = entries.length - 1; at >= 0; at--) {
    const found = releases.find((kind) => entries[at]?.events.some((event) => event.kind === kind));
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Soil: tested before it is leached, leached slowly where it is rising or was tested itself. */
function soilCourse(facts: Facts, salt: SaltFound): CourseStep[] {
  const { band, ec } = facts;
  const figures = flushFigures(facts);
  const test = step(
    "test the medium",
    "now",
    isExtract(band.sample) ? measureSays.testWhichSalts : measureSays.testSoil,
  );
  const stop = step("lower the feed", "at the next watering", saltSays.stopFeeding, { share: 0 });
  const isRising = ec?.trend === "rising" && salt.sure === "named";
  const leach = isRising ? [step("flush", "now", saltSays.leachSoil(figures), { ph: figures.ph })] : [];
  return [
    ...(salt.sure === "sole" ? measureTwice() : []),
    test,
    stop,
    ...leach,
    measureNext(),
    ...(facts.plant.failing ? [easeLoad(facts)] : []),
  ];
}
