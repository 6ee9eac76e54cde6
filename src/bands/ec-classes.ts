import { type EcBySample, type EcLimits, type Feeder } from "./limits";

/** Three pairs of limits under one source. */
export const classes = (
  source: string,
  light: readonly [number, number],
  medium: readonly [number, number],
  heavy: readonly [number, number],
): EcLimits => {
  const of = ([low, high]: readonly [number, number]) => ({ low, high, source });
  return { light: of(light), medium: of(medium), heavy: of(heavy) } satisfies Record<Feeder, object>;
};

/**
 * Extracts of soilless mixes: by the classes of [umass-soluble-salts] the light feeder's limits are "low", the medium
 * feeder's end where "normal" ends, and the heavy feeder's begin where it begins.
 */
const extracts = {
  "1:2 extract": classes("[umass-soluble-salts]; heavy upper common practice", [0.3, 0.8], [0.6, 1.3], [0.8, 1.5]),
  "saturated extract": classes(
    "[umass-soluble-salts]; heavy upper common practice",
    [0.8, 2.0],
    [1.5, 3.5],
    [2.0, 4.0],
  ),
} as const;

/**
 * Soilless mixes. The pour-through's upper limits serve for the drain of an ordinary watering too; its lower ones do
 * not, because such a drain of a healthy pot lies near the feed [contest-tomato-2020].
 */
export const soilless: EcBySample = {
  drain: classes("upper [ncsu-pourthru], lower common practice", [0.8, 2.6], [1.2, 3.5], [1.6, 4.6]),
  "pour-through": classes("[ncsu-pourthru]", [1.0, 2.6], [2.0, 3.5], [2.6, 4.6]),
  ...extracts,
};

const barkRunoff: EcLimits = {
  light: { low: 0.2, high: 0.5, source: "[sna-bmp-1997]" },
  medium: { low: 0.5, high: 1.0, source: "[sna-bmp-1997]" },
  heavy: { low: 0.5, high: 2.0, source: "common practice" },
};

/** Bark: what is left when the water's own EC has been taken off. */
export const bark: EcBySample = { drain: barkRunoff, "pour-through": barkRunoff, ...extracts };

/**
 * Crops on mineral wool are fed strongly: the heavy limits take in what growers' drains read [hemming-2019] [contest-
 * tomato-2020].
 */
const woolDrain = classes(
  "upper [hemming-2019], [contest-tomato-2020], lower common practice",
  [1.0, 2.5],
  [1.5, 4.0],
  [2.0, 5.5],
);
export const mineralWool: EcBySample = { drain: woolDrain, "pour-through": woolDrain };

const inertDrain = classes("common practice", [0.8, 2.0], [1.2, 2.8], [1.8, 3.5]);
export const inert: EcBySample = { drain: inertDrain, "pour-through": inertDrain };

const soilDrain = classes("common practice", [0.5, 2.0], [0.8, 3.0], [1.2, 4.0]);
/** Soil: the extracts are tests of the soil itself [psu-high-tunnel] [fao-61]; its drain shows a direction only. */
export const soil: EcBySample = {
  drain: soilDrain,
  "pour-through": soilDrain,
  "1:2 extract": classes("upper [psu-high-tunnel], lower common practice", [0.1, 0.4], [0.2, 0.8], [0.3, 1.2]),
  "saturated extract": classes("upper [fao-61], lower common practice", [0.4, 1.3], [0.6, 2.5], [0.8, 4.0]),
};

/** A tank without a drain: the solution itself; tomatoes bore alike at 5 and more [signore-2016]. */
export const waterCulture: EcBySample = {
  drain: classes("upper [signore-2016] for heavy, common practice", [0.8, 1.8], [1.2, 2.5], [2.0, 5.0]),
};
