import { type Facts } from "./facts";
import { type SaltFound } from "./salt-found";
import { type Urgency } from "./words";

const oneStepLower = {
  now: "today",
  today: "next watering",
  "next watering": "next watering",
  watch: "watch",
  none: "none",
} as const;

/** How soon salt is dealt with; where it stood long without harm, a step later. */
export function urgencyOf(salt: Omit<SaltFound, "urgency">, { plant }: Facts): Urgency {
  const { degree, sure, far, harmlessSoFar, falling } = salt;
  if (degree === "extreme") return harmlessSoFar ? oneStepLower.now : "now";
  if (plant.failing && far) return "now";
  if (falling) return "next watering";
  const isSalty = plant.failing || plant.signs.has("tip burn");
  const urgency = degree === "strong" || isSalty || (sure !== "named" && far) ? "today" : "next watering";
  return harmlessSoFar ? oneStepLower[urgency] : urgency;
}
