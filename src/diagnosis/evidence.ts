import { type Band } from "../bands/band";
import { isAbove, isBelow, standing } from "../maths/compare";
import { mannKendall } from "../maths/mann-kendall";
import { quantities, written } from "../quantities";
import { type PlacedReading } from "./runoff-readings";
import { tolerance, trendChance } from "./verdict-limits";

/** Where one quantity of the runoff stands, weighed over its two latest readings. */
export type Standing = "inside" | "low" | "high" | "once" | "too close" | "soil unclear" | "unknown";

export interface Evidence {
  readonly standing: Standing;
  readonly reason: string;
  /** The places of the readings it rests on. */
  readonly places: readonly number[];
}

/** One reading against its limits: outside counts as clear when it is further out than the meters can be off. */
type Side = "inside" | "barely low" | "barely high" | "low" | "high";

/** The columns, by the reading before the latest. */
const row = (
  ...[none, inside, barelyLow, barelyHigh, low, high]: [Standing, Standing, Standing, Standing, Standing, Standing]
): Readonly<Record<Side | "none", Standing>> => ({ none, inside, "barely low": barelyLow, "barely high": barelyHigh, low, high });

/** The latest reading (the row) beside the one before (the column): two must agree before a trouble has a name. */
const weighed: Readonly<Record<Side, Readonly<Record<Side | "none", Standing>>>> = {
  //                 none         inside       barely low   barely high  low     high
  "inside":      row("inside",    "inside",    "inside",    "inside",    "once", "once"),
  "barely low":  row("too close", "too close", "too close", "too close", "once", "once"),
  "barely high": row("too close", "too close", "too close", "too close", "once", "once"),
  "low":         row("once",      "once",      "once",      "once",      "low",  "once"),
  "high":        row("once",      "once",      "once",      "once",      "once", "high"),
};

/**
 * What the runoff's pH, or its EC, says by itself: one row of evidence for the verdict.
 *
 * Errs to doubt: a reading outside by less than the meters' tolerance, or outside once, is no trouble yet. Soil needs a
 * trend as well, because its runoff tells a direction rather than a level.
 *
 * Source:   tolerances and the soil rule: src/diagnosis/verdict-limits.ts; two readings: common practice
 */
export function evidence(readings: readonly PlacedReading[], name: "ph" | "ec", band: Band): Evidence {
  const values = readings.flatMap(({ runoffPh, runoffEc, place }) => {
    const value = name === "ph" ? runoffPh : runoffEc;
    return value === undefined ? [] : [{ value, place }];
  });
  const [latest, before] = [values.at(-1), values.at(-2)];
  const called = name === "ph" ? "runoff pH" : "runoff EC";
  if (latest === undefined || !readings.slice(-2).some(({ place }) => place === latest.place)) {
    return { standing: "unknown", reason: `${called} was not measured in the last two readings`, places: [] };
  }
  const pair = before === undefined ? [latest] : [latest, before];
  const level = weighed[sideOf(latest.value, name, band)][before === undefined ? "none" : sideOf(before.value, name, band)];
  const found = band.medium === "soil" ? bySoil(level, values.map(({ value }) => value)) : level;
  const said = [...pair].reverse().map(({ value }) => written(value, name).replace("pH ", "")).join(", then ");
  return { standing: found, reason: `${called} ${said}: ${meaning(found, name, band)}`, places: pair.map(({ place }) => place) };
}

function sideOf(value: number, name: "ph" | "ec", band: Band): Side {
  const { resolution } = quantities[name];
  const side = standing(value, band[name], resolution);
  if (side === "inside") return side;
  const limit = band[name][side === "low" ? 0 : 1];
  const off = tolerance[name](limit, band.medium);
  const clear = side === "low" ? isBelow(value, limit - off, resolution) : isAbove(value, limit + off, resolution);
  return clear ? side : `barely ${side}`;
}

/** In soil a level outside counts only when the readings move further out. */
function bySoil(level: Standing, values: readonly number[]): Standing {
  if (level === "too close") return "soil unclear";
  if (level !== "low" && level !== "high") return level;
  const { s, oneSided } = mannKendall(values.map((value, day) => ({ day, value })));
  const outwards = level === "high" ? s > 0 : s < 0;
  return outwards && oneSided <= trendChance ? level : "soil unclear";
}

function meaning(found: Standing, name: "ph" | "ec", band: Band): string {
  const [low, high] = band[name];
  const said: Record<Standing, string> = {
    inside: `in the band ${low} to ${high}`,
    low: `below ${low} twice`,
    high: `above ${high} twice`,
    once: `outside the band ${low} to ${high}, and no second reading agrees yet`,
    "too close": `so close to the band ${low} to ${high} that a meter cannot tell`,
    "soil unclear": `outside the band ${low} to ${high}, but runoff of soil counts by its trend, and none leads further out`,
    unknown: "not measured",
  };
  return said[found];
}
