import { type CourseStep } from "../pot-judgement";
import { type Cause } from "../words";
import { type Facts } from "../facts";
import { wantedOnSaltyWater, wantedRunoff } from "../limits";
import { saltSays } from "../says/salt-says";
import { step } from "./step";
import { isFeedAtFault } from "./weaker-feed";

/** More runoff, and more often, where too little drains; never where the feed is what is too strong. */
export function runoffSteps({ water, feed }: Facts, causes: readonly Cause[]): CourseStep[] {
  if (isFeedAtFault(causes)) return [];
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
export const litresFor = (kept: number | undefined, share: number): number | undefined =>
  kept === undefined || !(kept > 0) ? undefined : kept / (1 - share);
