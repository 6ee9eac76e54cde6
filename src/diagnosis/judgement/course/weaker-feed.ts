import { type CourseStep } from "../pot-judgement";
import { type Cause } from "../words";
import { type Facts } from "../facts";
import { saltSays } from "../says/salt-says";
import { feedThatFits } from "./feed-target";
import { step } from "./step";

/** To lower a feed by less than this is no order. */
const sameFeed = 0.95;
/** A tank topped up with feed within so many readings is what raised it. Common practice. */
const lately = 3;

/** Lower the feed: where it is too strong, near its limit, mixed wrong or not known. */
export function weakerFeed(facts: Facts, causes: readonly Cause[]): CourseStep[] {
  const { feed, entries } = facts;
  const to = feedThatFits(facts);
  const lower = (when: "now" | "at the next watering", says: string, ec: number): CourseStep[] => [
    step("lower the feed", when, says, { ec, share: feed.ec === undefined ? undefined : Math.min(1, ec / feed.ec) }),
  ];
  const comesBack = entries.slice(-lately).some(({ events }) => events.some(({ kind }) => kind === "topped up"));
  if (feed.mixedWrong === "strong" && feed.ec !== undefined && causes.includes("feed mixed wrong"))
    return lower("now", saltSays.wrongMix(feed.ec, to), to);
  if (feed.ec !== undefined && to > sameFeed * feed.ec) return [];
  if (causes.includes("feed too strong"))
    return lower("now", comesBack ? saltSays.topUpPlain(to) : saltSays.weakerFeed(to, feed.ec), to);
  if (feed.ec === undefined && feed.isWaterNow) return [];
  if (feed.ec === undefined) return lower("at the next watering", saltSays.unknownFeed(to), to);
  return feed.nearLimit ? lower("at the next watering", saltSays.weakerFeed(to, feed.ec), to) : [];
}

/** The feed itself is what brings the salt. */
export const isFeedAtFault = (causes: readonly Cause[]): boolean =>
  causes.includes("feed too strong") || causes.includes("feed mixed wrong");
