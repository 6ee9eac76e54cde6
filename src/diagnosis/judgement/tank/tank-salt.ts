import { type Band } from "../../../bands/band";
import { type AcidityFound } from "../acidity";
import { type Conclusion } from "../conclusion";
import { easeLoad, lookAtRoots, measureTank } from "../course/common-steps";
import { step } from "../course/step";
import { type Entry, tells } from "../entry";
import { type Facts } from "../facts";
import { extremeMultiple, strongMultiple } from "../limits";
import { tankSays } from "../says/other-says";
import { mostUrgent } from "../urgency";
import { type Urgency } from "../words";
import { stirred, isOld } from "./tank-state";

/** Above the band: thinned first, whatever the pH; an old or far stronger solution is changed. */
export function tooSalty(
  facts: Facts,
  ec: number,
  { acidity, reasons }: { readonly acidity: AcidityFound; readonly reasons: readonly string[] },
): Conclusion {
  const { band, plant, feed, options } = facts;
  const multiple = ec / band.ec[1];
  const isFar = multiple > strongMultiple;
  const waterEc = feed.waterEc ?? 0;
  const to = Math.max(middleOf(band), waterEc);
  const share = to > waterEc ? (ec - to) / (ec - waterEc) : 1;
  const litres = options.containerLitres === undefined ? undefined : share * options.containerLitres;
  const isDosed = facts.evidence.slice(-2).some(isDosing);
  const change = isOld(facts) || plant.failing || multiple >= extremeMultiple;
  const isPh = isNamed(acidity);
  const bySalt: Urgency = plant.failing ? "now" : isFar || plant.ill ? "today" : "next watering";
  const urgency = mostUrgent(bySalt, acidity.urgency);
  const steps = [
    ...stirred(facts),
    step("dilute the tank", isFar || plant.ill ? "now" : "at the next watering", tankSays.dilute(ec, { to, share, litres }), {
      ec: to,
      share,
      litres,
    }),
    ...(isDosed ? [step("lower the feed", "at the next watering", tankSays.dosedTooMuch)] : []),
    ...(change ? [step("change the tank", "in 3 to 7 days", tankSays.change)] : []),
    ...(plant.failing ? [lookAtRoots(facts), easeLoad(facts)] : []),
    measureTank(),
    ...(isPh ? [step("measure again now", "48 h after", tankSays.phAfterWater(band.phAim))] : []),
  ];
  const verdict = isPh ? "salt buildup and pH out of range" : "salt buildup";
  return {
    verdict,
    urgency,
    causes: [isDosed ? "feed too strong" : "plants drink more water than salt"],
    steps,
    reasons,
  };
}

/** Below the band: fed to its middle. */
export function tooWeak(
  facts: Facts,
  { acidity, reasons }: { readonly acidity: AcidityFound; readonly reasons: readonly string[] },
): Conclusion {
  const to = middleOf(facts.band);
  const ph = facts.band.phAim;
  const isPh = isNamed(acidity);
  return {
    verdict: "short of feed",
    urgency: mostUrgent("next watering", facts.plant.ill ? "today" : "none"),
    causes: ["plants take more salt than water"],
    steps: [
      ...stirred(facts),
      step("raise the feed", "at the next watering", tankSays.feed(to), { ec: to }),
      measureTank(),
      ...(isPh ? [step("steer the pH", "24 h after", tankSays.phAfterFeed(ph), { ph })] : []),
    ],
    reasons,
  };
}

const isNamed = ({ degree, sure }: AcidityFound): boolean => degree !== "none" && sure !== "once";

/** What to aim at in a tank: the middle of the band. */
const middleOf = ({ ec: [low, high] }: Band): number => (low + high) / 2;

/** Topped up, or changed, with feed. */
const isDosing = (entry: Entry): boolean =>
  tells(entry, "topped up", "feed change") && /\b(?:feed|nutrient|stock|concentrate)/i.test(entry.notes ?? "");
