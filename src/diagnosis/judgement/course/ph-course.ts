import { type Medium } from "../../../bands/media-table";
import { type LogEventKind } from "../../../log/log";
import { overFlushLimit } from "../../../flush/over-flush-limit";
import { isAbove, isBelow } from "../../../maths/compare";
import { quantities } from "../../../quantities";
import { type CourseStep } from "../pot-judgement";
import { type Cause } from "../words";
import { type AcidityFound } from "../acidity";
import { type Facts } from "../facts";
import { isSouredWithin, mendInputPh } from "../input";
import { showsOnly } from "../plant";
import { measureSays } from "../says/other-says";
import { plantSays } from "../says/plant-says";
import { phSays } from "../says/ph-says";
import { lookAtRoots, measureNext, measureTwice, rampAfterFlush, readingsAfter, wordsOn } from "./common-steps";
import { fullFeed } from "./feed-target";
import { step } from "./step";

/**
 * Media that a rinse can reset; peat and bark hold their pH for weeks, and the drain of soil is not the soil's. Common
 * practice.
 */
const resettable: ReadonlySet<Medium | undefined> = new Set(["coir", "mineral wool", "inert"]);
/** Media without a pH of their own follow what is poured within a day. Common practice. */
const keepsNoPh: ReadonlySet<Medium | undefined> = new Set(["mineral wool", "inert"]);
/** Media that lime or a drench moves over weeks. */
const slow: ReadonlySet<Medium | undefined> = new Set(["peat", "bark"]);

/** How far the pH poured is moved from the aim when steering; never out of the band. Common practice. */
const steerBy = { up: 0.5, down: 0.3 } as const;

/**
 * What to do about pH, in order: a buffer where nothing says that the pen is right, what is poured, the water, then
 * the pot.
 *
 * Errs to steering: a reset only far outside, with EC not high, once, never on a first reading.
 */
export function phCourse(facts: Facts, acidity: AcidityFound, causes: readonly Cause[]): CourseStep[] {
  const { trust, ec, band, feed, plant } = facts;
  const isLater = keepsNoPh.has(band.medium)
    ? measureNext()
    : step("measure again now", "in 3 to 7 days", measureSays.inDays);
  const first = [
    ...(trust.uncalibrated ? [step("check the meter", "now", phSays.bufferFirst)] : []),
    ...(acidity.sure === "sole" || ec?.side === "high" ? measureTwice().slice(0, 1) : []),
  ];
  if (band.medium === "soil") return [...first, step("test the medium", "now", measureSays.testSoil), isLater];
  const isAcid = acidity.side === "low" && (feed.isAcid || isSouredWithin(facts));
  const mended = isAcid ? [] : mendInputPh(facts);
  const roots = plant.ill ? [lookBy(facts, acidity)] : [];
  return [
    ...first,
    ...mended,
    ...(causes.includes("alkalinity suspected")
      ? [step("treat the alkalinity", "at the next watering", phSays.treatAlkalinity(feed.alkalinity))]
      : []),
    ...(mended.length === 0 ? potSteps(facts, acidity) : []),
    ...roots,
    isLater,
  ];
}

/** Young leaves that pale at a high pH: iron is there and cannot be taken up [umd-high-ph]. */
const ironSigns: ReadonlySet<LogEventKind> = new Set(["interveinal yellowing", "pale new growth"]);

/** Specks and burnt edges at a low pH: iron and manganese in excess [fisher-low-ph]. */
const metalSigns: ReadonlySet<LogEventKind> = new Set(["leaf spots", "tip burn", "pale old leaves", "dying leaves"]);

/** What this pH does to leaves, where nothing else is wrong with them; otherwise the roots are looked at. */
function lookBy(facts: Facts, { side }: AcidityFound): CourseStep {
  const { plant, ph } = facts;
  if (ph !== undefined && side === "high" && showsOnly(plant, ironSigns))
    return step("look at the plant", "now", plantSays.ironLocked(wordsOn(facts), ph.latest));
  if (ph !== undefined && side === "low" && showsOnly(plant, metalSigns) && plant.signs.has("leaf spots"))
    return step("look at the plant", "now", plantSays.metalExcess(wordsOn(facts), ph.latest));
  return lookAtRoots(facts);
}

/** A feed may stand this far past the band while it pulls the pot back. Common practice. */
const pastBand = 0.3;

/** The pH to pour: moved from the aim towards where the pot has to go, never back from what is poured already. */
function steered({ band, feed }: Facts, isUp: boolean): number {
  const [low, high] = band.ph;
  if (isUp) {
    const up = Math.min(high, band.phAim + steerBy.up);
    return Math.max(up, Math.min(feed.ph ?? up, high + pastBand));
  }
  const down = Math.max(low, band.phAim - steerBy.down);
  return Math.min(down, Math.max(feed.ph ?? down, low - pastBand));
}

/** A feed this near the aim was meant for it. Common practice. */
const nearAim = 0.3;

/** The aim was poured, or more than that, and did not hold the pot: to pour it again would not either. */
function isAimPoured({ feed, band }: Facts, isUp: boolean): boolean {
  if (feed.ph === undefined) return false;
  const { resolution } = quantities.ph;
  return isUp
    ? !isBelow(feed.ph, band.phAim - nearAim, resolution)
    : !isAbove(feed.ph, band.phAim + nearAim, resolution);
}

/** pH that a pen cannot tell from what is poured already. */
const samePour = 0.15;

function potSteps(facts: Facts, acidity: AcidityFound): CourseStep[] {
  const { band, phase, ec, options, feed } = facts;
  const { medium } = band;
  const isUp = acidity.side === "low";
  const ph = steered(facts, isUp);
  if (phase.phase === "after a flush")
    return [step("steer the pH", "at the next watering", phSays.keepSteering(ph), { ph })];
  const isReset = acidity.degree === "far" && acidity.sure === "named" && resettable.has(medium) && ec?.side !== "high";
  if (isReset) {
    const litres = options.containerLitres === undefined ? undefined : overFlushLimit(options.containerLitres, medium);
    const to = isAimPoured(facts, isUp) ? ph : band.phAim;
    return [
      step("reset the pH", "now", phSays.reset(to, litres, isUp), { ph: to, litres }),
      rampAfterFlush(facts, fullFeed(facts), "rinse"),
      ...readingsAfter(),
    ];
  }
  const isPoured = feed.ph !== undefined && Math.abs(feed.ph - ph) < samePour;
  const says = isPoured
    ? phSays.pouredAlready(isUp, ph)
    : slow.has(medium)
      ? phSays.steerBuffered(isUp, ph)
      : isUp
        ? phSays.steerUp(ph)
        : phSays.steerDown(ph);
  return [step("steer the pH", "at the next watering", says, { ph })];
}
