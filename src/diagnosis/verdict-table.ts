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

/** The runoff EC's standing (the row) beside the pH's (the column). */
export const weighed: Readonly<Record<Standing, Readonly<Record<Standing, VerdictAnswer | "cannot say">>>> = {
  "inside": { "inside": ok, "low": acidity, "high": acidity, "once": confirm, "too close": meter, "soil unclear": cannot, "unknown": cannot },
  "high": { "inside": salt, "low": both, "high": both, "once": salt, "too close": salt, "soil unclear": salt, "unknown": salt },
  "low": { "inside": cannot, "low": acidity, "high": acidity, "once": confirm, "too close": meter, "soil unclear": cannot, "unknown": cannot },
  "once": { "inside": confirm, "low": acidity, "high": acidity, "once": confirm, "too close": confirm, "soil unclear": confirm, "unknown": confirm },
  "too close": { "inside": meter, "low": acidity, "high": acidity, "once": confirm, "too close": meter, "soil unclear": meter, "unknown": meter },
  "soil unclear": { "inside": cannot, "low": acidity, "high": acidity, "once": confirm, "too close": meter, "soil unclear": cannot, "unknown": cannot },
  "unknown": { "inside": cannot, "low": acidity, "high": acidity, "once": confirm, "too close": meter, "soil unclear": cannot, "unknown": cannot },
};
