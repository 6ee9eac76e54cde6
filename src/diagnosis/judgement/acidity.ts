import { isBelow } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Facts } from "./facts";
import { farPh, solePh } from "./limits";
import { countsAlone } from "./salt";
import { type Urgency } from "./words";

/** Where the runoff pH stands, and how sure that is. */
export interface AcidityFound {
  readonly degree: "none" | "mild" | "far";
  readonly side: "low" | "high" | undefined;
  readonly sure: "named" | "sole" | "once";
  readonly urgency: Urgency;
}

const within: AcidityFound = { degree: "none", side: undefined, sure: "named", urgency: "none" };

/**
 * How far the runoff pH stands outside: mildly, which is steered, or far, which some media can be reset from.
 *
 * Errs to steering: far needs two readings that far out, or one and a plant that shows it.
 *
 * Source:   src/diagnosis/judgement/limits.ts
 */
export function acidityOf(facts: Facts): AcidityFound {
  const { ph, band, plant } = facts;
  if (ph === undefined || (ph.side !== "low" && ph.side !== "high")) return within;
  const { resolution } = quantities.ph;
  const isFar = (beyond: number): boolean => !isBelow(beyond, farPh, resolution);
  const [low, high] = band.ph;
  const beyondBefore = ph.before === undefined ? 0 : ph.side === "low" ? low - ph.before : ph.before - high;
  const far = isFar(ph.beyond) && (isFar(beyondBefore) || plant.ill);
  const sure =
    ph.witness === "agreed"
      ? "named"
      : ph.witness === "sole" && countsAlone(facts) && !isBelow(ph.beyond, solePh, resolution)
        ? "sole"
        : "once";
  const soon = sure === "once" ? isFar(ph.beyond) : far;
  return { degree: far ? "far" : "mild", side: ph.side, sure, urgency: soon ? "today" : "next watering" };
}
