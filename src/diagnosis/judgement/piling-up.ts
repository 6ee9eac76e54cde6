import { isBelow } from "../../maths/compare";
import { type LogEventKind } from "../../log/log";
import { quantities } from "../../quantities";
import { type Conclusion } from "./conclusion";
import { measureNext } from "./course/common-steps";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { stayingRatio, wantedRunoff } from "./limits";
import { showsOnly } from "./plant";
import { type SaltFound } from "./salt-found";
import { percentText } from "./says/figures";
import { saltSays } from "./says/salt-says";

/** What salt does to a plant before the drain has left its band. */
const saltSigns: ReadonlySet<LogEventKind> = new Set(["tip burn", "crust", "dying leaves"]);

/**
 * Still in band and on its way out: the drain climbs, and too little drains, it stands at twice its feed, or the leaf
 * edges burn. More is let run off before it takes a flush.
 *
 * Errs to acting early: a little more water through the pot harms nothing.
 *
 * Source:   growers' drains stood at 1.0 to 1.7 of their feed [contest-tomato-2020]; the rest common practice
 */
export function pilingUp(facts: Facts, salt: SaltFound, reasons: readonly string[]): Conclusion | undefined {
  const { ec, water, plant, band } = facts;
  if (ec === undefined || ec.side === "low" || band.medium === "soil" || salt.chosen) return undefined;
  const isScant = water.runoff === "little" || water.runoff === "none";
  const isFar = !isBelow(salt.ratio ?? 0, stayingRatio, quantities.saltRatio.resolution);
  const isSeen = [...saltSigns].some((sign) => plant.signs.has(sign));
  const isRising = ec.trend === "rising" && (isScant || isFar || isSeen);
  const isFirst = ec.before === undefined && isSeen && (isScant || isFar);
  if (!(isRising || isFirst) || !isExplained(facts)) return undefined;
  const why = whyItRises(facts, isScant, isFar ? salt.ratio : undefined);
  const says = isSeen ? saltSays.seenInBand(why, plant.ill, wantedRunoff) : saltSays.beforeItShows(why);
  return {
    verdict: "in band",
    urgency: isSeen || isFar ? "next watering" : "watch",
    causes: [isScant ? "too little runoff" : "not known"],
    steps: [
      step("let more run off", "at the next watering", says, { share: isSeen ? wantedRunoff : undefined }),
      measureNext(),
    ],
    reasons,
  };
}

/** Nothing is wrong with the plant but what salt does. */
const isExplained = ({ plant }: Facts): boolean =>
  !plant.failing && (!plant.ill || showsOnly(plant, saltSigns));

/** "it rises and only 7 % drains". */
function whyItRises({ ec, water }: Facts, isScant: boolean, ratio: number | undefined): string {
  const scant = water.share === undefined ? "hardly anything drains" : `only ${percentText(water.share)} drains`;
  return [
    ...(ec?.trend === "rising" ? ["it rises"] : []),
    ...(isScant ? [scant] : ratio === undefined ? [] : [`it stands at ${ratio.toFixed(1)} times its feed`]),
  ].join(" and ");
}
