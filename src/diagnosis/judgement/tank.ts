import { type Band } from "../../bands/band";
import { type Conclusion } from "./conclusion";
import { easeLoad, lookAtPlant, lookAtRoots, measureNext } from "./course/common-steps";
import { step } from "./course/step";
import { acidityOf, type AcidityFound } from "./acidity";
import { daysBetween, type Entry, tells } from "./entry";
import { type Facts } from "./facts";
import { extremeMultiple, muchAlkalinity, strongMultiple, tankDays } from "./limits";
import { type PotReading } from "./pot-reading";
import { besides, levelReason } from "./reasons";
import { plantSays, tankSays } from "./says/other-says";
import { phSays } from "./says/ph-says";
import { type Cause, type Urgency, type When } from "./words";
import { mostUrgent } from "./urgency";

/** In a tank without a drain the solution is one: what is read of it counts, whichever column it stands in. */
export function tankReadings(readings: readonly PotReading[]): readonly PotReading[] {
  return readings.map(({ inputEc, inputPh, runoffEc, runoffPh, ...others }) => ({
    ...others,
    runoffEc: runoffEc ?? inputEc,
    runoffPh: runoffPh ?? inputPh,
    inputEc: undefined,
    inputPh: undefined,
  }));
}

/** What to aim at in a tank: the middle of the band. */
const middleOf = ({ ec: [low, high] }: Band): number => (low + high) / 2;

/**
 * A tank without a drain: EC up, the plants drink water; EC down, they take salt; pH follows nitrogen, alkalinity and
 * roots.
 *
 * Errs to water and small steps; salt is set right before pH.
 *
 * Source:   common practice; set points of 5 and 10 alike for tomatoes [signore-2016]
 */
export function tankConclusion(facts: Facts): Conclusion {
  const { ec, ph, plant } = facts;
  const acidity = acidityOf(facts);
  const reasons = [levelReason(ec, "ec", facts), levelReason(ph, "ph", facts), ...besides(facts)];
  if (ec?.side === "high") return tooSalty(facts, ec.latest, { acidity, reasons });
  if (acidity.degree !== "none") return offPh(facts, acidity, reasons);
  if (ec?.side === "low") return tooWeak(facts, reasons);
  return plant.ill || isOld(facts) ? worthChanging(facts, reasons) : wellTank(facts, reasons);
}

function tooWeak(facts: Facts, reasons: readonly string[]): Conclusion {
  const to = middleOf(facts.band);
  return {
    verdict: "short of feed",
    urgency: mostUrgent("next watering", facts.plant.ill ? "today" : "none"),
    causes: ["plants take more salt than water"],
    steps: [
      ...stirred(facts),
      step("raise the feed", "at the next watering", tankSays.feed(to), { ec: to }),
      measureNext(),
    ],
    reasons,
  };
}

/** Good readings and a plant that fails, or weeks of topping up: a steady EC can hide an exhausted solution. */
function worthChanging(facts: Facts, reasons: readonly string[]): Conclusion {
  const { plant } = facts;
  const change = (when: When): Conclusion["steps"] => [step("change the tank", when, tankSays.change)];
  if (!plant.ill) {
    return { verdict: "in band", urgency: "next watering", causes: [], steps: change("at the next watering"), reasons };
  }
  const steps = plant.failing
    ? [...change("now"), lookAtPlant(facts), easeLoad(facts)]
    : [lookAtPlant(facts), ...change("in 3 to 7 days")];
  return { verdict: "in band", urgency: "today", causes: ["not known"], steps, reasons };
}

/** Well where it stands still; on its way out of the band what it is topped up with turns it round. */
function wellTank({ ec }: Facts, reasons: readonly string[]): Conclusion {
  const found = { verdict: "in band", reasons } as const;
  switch (ec?.trend ?? "none") {
    case "rising": {
      const steps = [step("dilute the tank", "at the next watering", tankSays.topUpWater), measureNext()];
      return { ...found, urgency: "watch", causes: ["plants drink more water than salt"], steps };
    }
    case "falling": {
      const steps = [step("raise the feed", "at the next watering", tankSays.topUpFeed), measureNext()];
      return { ...found, urgency: "watch", causes: ["plants take more salt than water"], steps };
    }
    case "none":
      return { ...found, urgency: "none", causes: [], steps: [step("carry on", "in a week", plantSays.carryOn)] };
  }
}

const stirred = ({ ec }: Facts): Conclusion["steps"] =>
  ec?.witness === "agreed" ? [] : [step("measure again now", "now", tankSays.stir)];

/** Topped up, or changed, with feed. */
const isDosing = (entry: Entry): boolean =>
  tells(entry, "topped up", "feed change") && /\b(?:feed|nutrient|stock|concentrate)/i.test(entry.notes ?? "");

function tooSalty(
  facts: Facts,
  ec: number,
  { acidity, reasons }: { readonly acidity: AcidityFound; readonly reasons: readonly string[] },
): Conclusion {
  const { band, plant, feed } = facts;
  const multiple = ec / band.ec[1];
  const isFar = multiple > strongMultiple;
  const waterEc = feed.waterEc ?? 0;
  const to = Math.max(middleOf(band), waterEc);
  const share = to > waterEc ? (ec - to) / (to - waterEc) : 1;
  const isDosed = facts.evidence.slice(-2).some(isDosing);
  const change = isOld(facts) || plant.failing || multiple >= extremeMultiple;
  const bySalt: Urgency = plant.failing ? "now" : isFar || plant.ill ? "today" : "next watering";
  const urgency = mostUrgent(bySalt, acidity.urgency);
  const steps = [
    ...stirred(facts),
    step("dilute the tank", isFar ? "now" : "at the next watering", tankSays.dilute(ec, to, share), { ec: to, share }),
    ...(isDosed ? [step("lower the feed", "at the next watering", tankSays.dosedTooMuch)] : []),
    ...(change ? [step("change the tank", "in 3 to 7 days", tankSays.change)] : []),
    ...(plant.failing ? [lookAtRoots(facts), easeLoad(facts)] : []),
    measureNext(),
  ];
  const verdict =
    acidity.degree !== "none" && acidity.sure !== "once" ? "salt buildup and pH out of range" : "salt buildup";
  return {
    verdict,
    urgency,
    causes: [isDosed ? "feed too strong" : "plants drink more water than salt"],
    steps,
    reasons,
  };
}

function offPh(facts: Facts, acidity: AcidityFound, reasons: readonly string[]): Conclusion {
  const { band, plant, trust, feed } = facts;
  const isFar = acidity.degree === "far";
  const aim = band.phAim;
  const isHigh = acidity.side === "high";
  const isHard = isHigh && (feed.alkalinity === undefined || feed.alkalinity > muchAlkalinity);
  const set = isFar
    ? step("reset the pH", "now", phSays.resetTank(aim), { ph: aim })
    : step("steer the pH", "now", phSays.steerTank(aim), { ph: aim });
  const steps = [
    ...(trust.uncalibrated ? [step("check the meter", "now", phSays.bufferFirst)] : []),
    ...stirred(facts),
    ...(acidity.sure === "once" ? [] : [set]),
    ...(isHard ? [step("treat the alkalinity", "in 3 to 7 days", phSays.treatAlkalinity(feed.alkalinity))] : []),
    ...(isHigh ? [] : [lookAtRoots(facts)]),
    ...(plant.failing ? [easeLoad(facts)] : []),
    step("measure again now", "24 h after", tankSays.stir),
  ];
  const urgency = mostUrgent(acidity.urgency, plant.failing ? "today" : "none");
  const causes: Cause[] = isHard ? ["alkalinity suspected"] : isHigh ? ["not known"] : ["acid feed suspected"];
  if (acidity.sure === "once")
    return {
      verdict: "confirm with a second reading",
      urgency,
      causes: [],
      steps: [...stirred(facts), measureNext()],
      reasons,
    };
  return { verdict: "pH out of range", urgency, causes, steps, reasons };
}

/** Topped up for three weeks and never changed. */
function isOld({ evidence, entries }: Facts): boolean {
  const since = entries.slice(entries.map((entry) => tells(entry, "tank changed")).lastIndexOf(true) + 1);
  const isTopped = since.some((entry) => tells(entry, "topped up"));
  return isTopped && (daysBetween(since[0], evidence.at(-1)) ?? 0) > tankDays;
}
