import { mannKendall } from "../maths/mann-kendall";
import { quantities, written } from "../quantities";
import { type PlacedReading } from "./root-zone-reading";
import { fewestForTrend, trendChance } from "./verdict-limits";

/**
 * Where one quantity of the runoff stands, by its two latest readings:
 * - inside: the latest is in the band, and the one before did not stand clearly outside
 * - low, high: both stand outside on that side by more than the tolerance (soil: and the trend leads further out)
 * - once: the two disagree, or there is only one and it stands outside
 * - too close: the latest is outside by less than the tolerance
 * - unclear: soil whose runoff stands outside without a trend
 * - unknown: not measured in either of the two latest readings
 */
export type Standing = "inside" | "low" | "high" | "once" | "too close" | "unclear" | "unknown";

export interface Evidence {
  readonly standing: Standing;
  readonly reason: string;
  /** The places of the readings it rests on, latest first. */
  readonly places: readonly number[];
}

export interface EvidenceQuestion {
  readonly quantity: "runoffPh" | "runoffEc";
  readonly limits: readonly [low: number, high: number];
  readonly tolerance: (value: number) => number;
  /** Runoff of soil tells a direction rather than a level. */
  readonly byTrend: boolean;
}

type Side = "low" | "high";
type Place = "inside" | "close low" | "close high" | Side;

interface Value {
  readonly place: number;
  readonly value: number;
}

/** How the runoff's pH, or its EC, stands against its limits. */
export function evidence(readings: readonly PlacedReading[], question: EvidenceQuestion): Evidence {
  const values = readings.flatMap((each): Value[] => {
    const value = each[question.quantity];
    return value === undefined ? [] : [{ place: each.place, value }];
  });
  const [latest, before] = [values.at(-1), values.at(-2)];
  const recent = readings.slice(-2).some(({ place }) => place === latest?.place);
  const called = question.quantity === "runoffPh" ? "runoff pH" : "runoff EC";
  if (latest === undefined || !recent) {
    return { standing: "unknown", reason: `${called} was not measured in the last two readings`, places: [] };
  }
  const standing = standingOf(placeOf(latest.value, question), before && placeOf(before.value, question));
  const trusted = question.byTrend ? soilStanding(standing, values) : standing;
  const pair = before === undefined ? [latest] : [latest, before];
  return { standing: trusted, reason: reasonFor(trusted, pair, question), places: pair.map(({ place }) => place) };
}

function placeOf(value: number, { limits: [low, high], tolerance, quantity }: EvidenceQuestion): Place {
  const half = quantities[quantity === "runoffPh" ? "ph" : "ec"].resolution / 2;
  if (low - value > tolerance(low) + half) return "low";
  if (value - high > tolerance(high) + half) return "high";
  if (low - value > half) return "close low";
  if (value - high > half) return "close high";
  if (value >= low - half && value <= high + half) return "inside";
  throw new RangeError("a reading that is no number reached the verdict");
}
