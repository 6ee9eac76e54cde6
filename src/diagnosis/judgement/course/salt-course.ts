import { type CourseStep } from "../pot-judgement";
import { type Cause } from "../words";
import { type Facts } from "../facts";
import { type SaltFound } from "../salt-found";
import { saltSays } from "../says/salt-says";
import { easeLoad, isDriedOut, lookAtRoots, measureTwice, rewetted } from "./common-steps";
import { step } from "./step";
import { releaseCourse } from "./release-course";
import { soilCourse } from "./soil-course";
import { isWashedOut, keptOn, thinned, washed } from "./wash-out";

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
    ...(plant.signs.has("dripper blocked") ? [step("water more often", "now", saltSays.clearDripper)] : []),
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
