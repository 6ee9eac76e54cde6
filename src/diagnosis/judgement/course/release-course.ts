import { type CourseStep } from "../pot-judgement";
import { type Cause } from "../words";
import { type Facts } from "../facts";
import { type SaltFound } from "../salt-found";
import { saltSays } from "../says/salt-says";
import { easeLoad, lookAtRoots, measureNext } from "./common-steps";
import { step } from "./step";
import { releaseOf } from "../release";
import { isWashedOut, thinned, washed } from "./wash-out";

/** Slow-release: on top it is taken off and the rest follows; mixed in it is repotted; not known, it is asked. */
export function releaseCourse(facts: Facts, salt: SaltFound, causes: readonly Cause[]): CourseStep[] | undefined {
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
