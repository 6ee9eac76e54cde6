import { type CourseStep } from "../pot-judgement";
import { type Facts } from "../facts";
import { type SaltFound } from "../salt-found";
import { isExtract } from "../limits";
import { measureSays } from "../says/other-says";
import { saltSays } from "../says/salt-says";
import { easeLoad, measureNext, measureTwice } from "./common-steps";
import { flushFigures } from "./flush-figures";
import { step } from "./step";

/** Soil: tested before it is leached, leached slowly where it is rising or was tested itself. */
export function soilCourse(facts: Facts, salt: SaltFound): CourseStep[] {
  const { band, ec, feed } = facts;
  const figures = flushFigures(facts);
  const test = step(
    "test the medium",
    "now",
    isExtract(band.sample) ? measureSays.testWhichSalts : measureSays.testSoil,
  );
  const stop = step("lower the feed", "at the next watering", saltSays.stopFeeding(feed.waterIsSalty), { share: 0 });
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

/**
 * What harms no soil, before its test: where its drain climbs and a crust, burnt edges or next to no drain agree.
 */
export function soilMeanwhile({ ec, plant, water, feed }: Facts): CourseStep[] {
  const isScant = water.runoff === "none" || water.runoff === "little";
  const isBorneOut = plant.signs.has("crust") || plant.signs.has("tip burn");
  if (ec?.trend !== "rising" || ec.side === "inside" || !(isBorneOut || isScant)) return [];
  return [
    ...(plant.signs.has("crust") ? [step("take off what lies on top", "now", saltSays.takeOffTop("crust"))] : []),
    step("lower the feed", "at the next watering", saltSays.stopFeeding(feed.waterIsSalty), { share: 0 }),
    step("let more run off", "at the next watering", saltSays.rinseSoil(feed.waterIsSalty)),
  ];
}
