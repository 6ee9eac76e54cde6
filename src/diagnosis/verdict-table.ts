import { type Standing } from "./evidence";

export type VerdictAnswer =
  | "in band"
  | "salt buildup"
  | "pH out of range"
  | "salt buildup and pH out of range"
  | "confirm with a second reading"
  | "check the meter";

const [ok, salt, acidity, both] = ["in band", "salt buildup", "pH out of range", "salt buildup and pH out of range"] as const;
const [confirm, meter, cannot] = ["confirm with a second reading", "check the meter", "cannot say"] as const;

type Answer = VerdictAnswer | "cannot say";

/** The columns, by the pH's standing. */
const row = (
  ...[inside, low, high, once, close, soil, unknown]: [Answer, Answer, Answer, Answer, Answer, Answer, Answer]
): Readonly<Record<Standing, Answer>> => ({ inside, low, high, once, "too close": close, "soil unclear": soil, unknown });

/** The runoff EC's standing (the row) beside the pH's (the column): every pair has its answer, none is left over. */
export const weighed: Readonly<Record<Standing, Readonly<Record<Standing, Answer>>>> = {
  //                   inside   low      high     once     close    soil     unknown
  "inside":        row(ok,      acidity, acidity, confirm, meter,   cannot,  cannot),
  "high":          row(salt,    both,    both,    salt,    salt,    salt,    salt),
  "low":           row(cannot,  acidity, acidity, confirm, meter,   cannot,  cannot),
  "once":          row(confirm, acidity, acidity, confirm, confirm, confirm, confirm),
  "too close":     row(meter,   acidity, acidity, confirm, meter,   meter,   meter),
  "soil unclear":  row(cannot,  acidity, acidity, confirm, meter,   cannot,  cannot),
  "unknown":       row(cannot,  acidity, acidity, confirm, meter,   cannot,  cannot),
};
