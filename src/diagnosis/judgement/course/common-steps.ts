import { vapourPressureDeficit } from "../../../environment/vapour-pressure-deficit";
import { type Celsius, type Percent } from "../../../quantities";
import { type CourseStep } from "../pot-judgement";
import { type Facts } from "../facts";
import { rootsAtLeast, rootsAtMost, tankAtMost } from "../limits";
import { type When } from "../words";
import { feedSays, measureSays, meterSays } from "../says/other-says";
import { plantSays } from "../says/plant-says";
import { step } from "./step";
import { rampOn } from "./feed-target";

/** A third less light. Common practice. */
const easedLight = 0.67;

/** First the same sample, then a second one. */
export const measureTwice = (): CourseStep[] => [
  step("measure again now", "now", measureSays.sameSampleNow),
  step("measure again now", "within the hour", measureSays.secondSample),
];

export const measureNext = (): CourseStep =>
  step("measure again now", "at the next watering", measureSays.nextWateringAfter);

/** A tank is not watered: it is stirred and read every day. */
export const measureTank = (): CourseStep => step("measure again now", "24 h after", measureSays.tankNext);

/** The two readings that decide after a flush. */
export const readingsAfter = (): CourseStep[] => [
  step("measure again now", "24 h after", measureSays.after24),
  step("measure again now", "48 h after", measureSays.after48),
];

export const checkMeter = (): CourseStep[] => [
  step("check the meter", "now", meterSays.check),
  step("measure again now", "within the hour", meterSays.standards),
];

/** Less light, no heat peaks, moderate air, with this pot's own vapour pressure deficit where the log tells it. */
export const easeLoad = (facts: Facts): CourseStep =>
  step("ease the load", "now", plantSays.easeLoad(airOf(facts).vpd), { share: easedLight });

/** The air of the latest row that tells it, and its vapour pressure deficit in kPa. */
export function airOf({ entries }: Facts): { readonly celsius: number | undefined; readonly vpd: number | undefined } {
  const told = [...entries].reverse();
  const latest = told.find(({ airCelsius }) => airCelsius !== undefined);
  const both = told.find((entry) => entry.airCelsius !== undefined && entry.humidityPercent !== undefined);
  return { celsius: latest?.airCelsius, vpd: deficitAt(both?.airCelsius, both?.humidityPercent) };
}

/** Temperatures at which the formula holds. */
const believableAir = [-20, 60] as const;

function deficitAt(celsius: number | undefined, humidity: number | undefined): number | undefined {
  if (celsius === undefined || humidity === undefined) return undefined;
  if (!(celsius >= believableAir[0] && celsius <= believableAir[1] && humidity > 0 && humidity <= 100))
    return undefined;
  return vapourPressureDeficit(celsius as Celsius, humidity as Percent);
}

/**
 * The gentle start that belongs to every flush: the ramp once it is under way, and until then a weaker feed to have
 * ready.
 */
export function rampAfterFlush(facts: Facts, full: number | undefined, after: "flush" | "rinse" = "flush"): CourseStep {
  const { share, ec } = rampOn(facts, 0, full);
  return step("feed by the ramp", "at the next watering", feedSays.rampAfterFlush(share, ec, after), { share, ec });
}

export const weakStartAfterFlush = (facts: Facts, full: number | undefined): CourseStep => ({
  ...rampAfterFlush(facts, full),
  act: "lower the feed",
});

/** A light pot whose plant fails is dry: what it reads and how it looks both come from that. */
export const isDriedOut = ({ plant }: Facts): boolean => plant.signs.has("light pot") && plant.failing;

/** Wetted first, read after: nothing else is done to a dry pot. */
export const rewetted = (): CourseStep[] => [
  step("re-wet slowly", "now", plantSays.rewet),
  step("measure again now", "within the hour", measureSays.whenWet),
];

/** The grower's own words on the plant, two at most. */
export const wordsOn = ({ plant }: Facts): string => plant.words.slice(0, 2).join("; ");

const rootCelsius = ({ entries }: Facts): number | undefined =>
  entries.slice(-2).flatMap(({ solutionCelsius }) => solutionCelsius ?? []).at(-1);

export const areRootsCold = (facts: Facts): boolean => (rootCelsius(facts) ?? rootsAtLeast) < rootsAtLeast;

/** Roots too cold or too hot by the latest two rows: that explains a plant which salt and pH do not. */
export function rootTemperature(facts: Facts, when: When): CourseStep | undefined {
  const celsius = rootCelsius(facts);
  const atMost = facts.band.medium === "water culture" ? tankAtMost : rootsAtMost;
  if (celsius === undefined || (celsius >= rootsAtLeast && celsius <= atMost)) return undefined;
  const says = celsius < rootsAtLeast ? plantSays.rootsCold(celsius) : plantSays.rootsHot(celsius, atMost);
  return step("look at the plant", when, says);
}

/** Roots that were seen to be brown or rotten. */
export const isHurtRoot = (facts: Facts): boolean => areRootsRotten(facts) || facts.plant.signs.has("brown roots");

/** Roots that smell, or are slimy or rotten by the grower's words: dead, and not merely burnt by salt. */
const areRootsRotten = ({ plant: { signs, words } }: Facts): boolean =>
  signs.has("bad smell") || (signs.has("brown roots") && /slim|\brot|mush|soft|pythium|crown/i.test(words.join(" ")));

export const lookAtRoots = (facts: Facts): CourseStep =>
  step(
    "look at the plant",
    "now",
    areRootsRotten(facts)
      ? plantSays.rootsRot(wordsOn(facts), facts.band.medium === "water culture")
      : plantSays.lookAtRoots(wordsOn(facts)),
  );

export function lookAtPlant(facts: Facts): CourseStep {
  if (facts.plant.signs.has("blossom end rot"))
    return step("look at the plant", "now", plantSays.noCalcium(wordsOn(facts)));
  if (areRootsRotten(facts)) return lookAtRoots(facts);
  return step("look at the plant", "now", plantSays.lookAt(wordsOn(facts)));
}
