import { median } from "../../maths/median";
import { type Entry } from "./entry";

/** What was fed before the latest change, mS/cm, and the place where that change was made; `undefined` without one. */
interface UsualFeed {
  readonly usual: number | undefined;
  readonly changedAt: number | undefined;
}

/** The feed of the days before a flush, which the ramp steps back up to. */
export const usualBeforeFlush = (feeds: readonly Entry[]): UsualFeed => ({
  usual: median(feeds.slice(-usualWindow).flatMap(({ inputEc }) => inputEc ?? [])),
  changedAt: undefined,
});

/** Feeds are the same within this share of the latest. Common practice. */
const sameFeedShare = 0.2;
const fewestUsual = 1;
const usualWindow = 8;

/** So many readings, or more, are steps; each within `sameFeedShare` of the one before. Common practice. */
const fewestSteps = 4;

/** A feed that moved step by step was not mixed wrong once: a tank was topped up, or a grower raised it. */
export function movesStepwise(feeds: readonly Entry[]): boolean {
  const ecs = feeds.slice(-usualWindow).flatMap(({ inputEc }) => inputEc ?? []);
  const isStep = (ec: number, before: number): boolean => Math.abs(ec - before) <= sameFeedShare * ec;
  return ecs.length >= fewestSteps && ecs.slice(1).every((ec, i) => isStep(ec, ecs[i] ?? NaN));
}

/** What the feed was before the run of feeds like the latest, and the place where that run began. */
export function usualBefore(feeds: readonly Entry[]): UsualFeed {
  const now = feeds.at(-1)?.inputEc ?? NaN;
  let start = feeds.length;
  while (start > 0 && Math.abs((feeds[start - 1]?.inputEc ?? NaN) - now) <= sameFeedShare * now) start--;
  const earlier = feeds.slice(Math.max(0, start - usualWindow), start).flatMap(({ inputEc }) => inputEc ?? []);
  if (earlier.length < fewestUsual) return { usual: undefined, changedAt: undefined };
  return { usual: median(earlier), changedAt: feeds[start]?.place };
}
