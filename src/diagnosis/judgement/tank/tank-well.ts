import { type LogEventKind } from "../../../log/log";
import { type Conclusion } from "../conclusion";
import { areRootsCold, easeLoad, lookAtPlant, measureTank, rootTemperature } from "../course/common-steps";
import { step } from "../course/step";
import { type Facts } from "../facts";
import { showsOnly } from "../plant";
import { tankSays } from "../says/other-says";
import { plantSays } from "../says/plant-says";
import { type When } from "../words";

/** What salt alone does to leaves. */
const burnt: ReadonlySet<LogEventKind> = new Set(["tip burn"]);

/** Good readings and a plant that fails, or weeks of topping up: a steady EC can hide an exhausted solution. */
export function worthChanging(facts: Facts, reasons: readonly string[]): Conclusion {
  const { plant } = facts;
  const change = (when: When): Conclusion["steps"] => [step("change the tank", when, tankSays.change)];
  if (!plant.ill) {
    return { verdict: "in band", urgency: "next watering", causes: [], steps: change("at the next watering"), reasons };
  }
  const isRising = facts.ec?.trend === "rising";
  const [before] = facts.ec?.values ?? [];
  if (isRising && before !== undefined && showsOnly(plant, burnt)) {
    const thin = step("dilute the tank", "now", tankSays.thinBack(before), { ec: before });
    const causes = ["plants drink more water than salt"] as const;
    return { verdict: "in band", urgency: "today", causes, steps: [thin, measureTank()], reasons };
  }
  const thin = isRising ? [step("dilute the tank", "now", tankSays.topUpWater)] : [];
  const warm = rootTemperature(facts, "now");
  const look = warm ?? lookAtPlant(facts);
  const steps = plant.failing
    ? [...(warm === undefined ? change("now") : []), look, ...(areRootsCold(facts) ? [] : [easeLoad(facts)])]
    : [...thin, look, ...change("in 3 to 7 days")];
  const causes = isRising ? (["plants drink more water than salt"] as const) : (["not known"] as const);
  return { verdict: "in band", urgency: "today", causes, steps, reasons };
}

/** Well where it stands still; on its way out of the band what it is topped up with turns it round. */
export function wellTank({ ec }: Facts, reasons: readonly string[]): Conclusion {
  const found = { verdict: "in band", reasons } as const;
  switch (ec?.trend ?? "none") {
    case "rising": {
      const steps = [step("dilute the tank", "at the next watering", tankSays.topUpWater), measureTank()];
      return { ...found, urgency: "watch", causes: ["plants drink more water than salt"], steps };
    }
    case "falling": {
      const steps = [step("raise the feed", "at the next watering", tankSays.topUpFeed), measureTank()];
      return { ...found, urgency: "watch", causes: ["plants take more salt than water"], steps };
    }
    case "none":
      return { ...found, urgency: "none", causes: [], steps: [step("carry on", "in a week", plantSays.carryOn)] };
  }
}
