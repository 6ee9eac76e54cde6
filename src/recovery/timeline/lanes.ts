import { type Band } from "../../bands/band";
import { weakestFeedEc } from "../../diagnosis/root-zone-reading";
import { saltRatio } from "../../diagnosis/salt-ratio";
import { vapourPressureDeficit } from "../../environment/vapour-pressure-deficit";
import { type PlacedRow } from "../../log/in-time";
import { quantities } from "../../quantities";
import { Refusal } from "../../refusal";

/** Which of a lane's lines: what was poured in, what drained, or the lane's only line. */
export type SeriesRole = "input" | "runoff" | "only";

export type LaneName =
  "EC" | "pH" | "salt ratio" | "uptake" | "plant trouble" | "VPD" | "air temperature" | "solution temperature";

/** Lanes that belong together stand together, with the dates under them. */
export type LaneGroup = "root zone" | "plant" | "air and water";

/** A value of a lane at one row. */
export type LaneValue = (row: PlacedRow) => number | undefined;

/** How one lane reads the rows. The last of its series is the one whose trend is told. */
export interface LaneDefinition {
  readonly name: LaneName;
  readonly group: LaneGroup;
  readonly unit: string;
  readonly decimals: number;
  /** Steps smaller than this are not told apart. */
  readonly resolution: number;
  /** The least span worth drawing: a smaller one would blow a meter's noise up into a story. Common practice. */
  readonly leastSpan: number;
  readonly series: readonly { readonly role: SeriesRole; readonly value: LaneValue }[];
  readonly limits: (band: Band) => readonly [number, number] | undefined;
  /** The lane that tells the same better: where that one can be drawn, this one is left out. */
  readonly standsInFor?: LaneName;
}

/** Where a formula refuses (frost, a ratio beyond any bed) there is nothing to draw. */
function unlessRefused(formula: () => number): number | undefined {
  try {
    return formula();
  } catch (problem) {
    if (problem instanceof Refusal) return undefined;
    throw problem;
  }
}

/**
 * Litres that one watering left in the pot: what had been drunk or evaporated before it. Not told by the day, for a log
 * may skip days.
 */
const uptake: LaneValue = ({ inputLitres, runoffLitres }) => {
  if (inputLitres === undefined || runoffLitres === undefined) return undefined;
  return runoffLitres <= inputLitres ? inputLitres - runoffLitres : undefined;
};

/** Against plain water, as on the day of a flush, a ratio says nothing and is not drawn. */
const ratio: LaneValue = ({ inputEc, runoffEc }) => {
  if (inputEc === undefined || runoffEc === undefined || !(inputEc >= weakestFeedEc)) return undefined;
  return unlessRefused(() => saltRatio(runoffEc, inputEc));
};

/** The worst of what was looked at, 0 as it should be to 3 bad; what was not looked at counts for nothing. */
const plantLook: LaneValue = ({ plant }) => {
  const seen = Object.values<number | undefined>({ ...plant }).filter((look) => look !== undefined);
  return seen.length === 0 ? undefined : Math.max(...seen);
};

/** kPa, the leaf as warm as the air. */
const vapourDeficit: LaneValue = ({ airCelsius, humidityPercent }) => {
  if (airCelsius === undefined || humidityPercent === undefined) return undefined;
  return unlessRefused(() => vapourPressureDeficit(airCelsius, humidityPercent));
};

const noLimits = (): undefined => undefined;

/** The lanes in the order in which they are drawn; a lane without a reading is left out. */
export const laneDefinitions: readonly LaneDefinition[] = [
  {
    name: "EC",
    group: "root zone",
    unit: "mS/cm",
    decimals: quantities.ec.decimals,
    resolution: quantities.ec.resolution,
    leastSpan: 1,
    series: [
      { role: "input", value: ({ inputEc }) => inputEc },
      { role: "runoff", value: ({ runoffEc }) => runoffEc },
    ],
    limits: ({ ec }) => ec,
  },
  {
    name: "pH",
    group: "root zone",
    unit: "",
    decimals: quantities.ph.decimals,
    resolution: quantities.ph.resolution,
    leastSpan: 1,
    series: [
      { role: "input", value: ({ inputPh }) => inputPh },
      { role: "runoff", value: ({ runoffPh }) => runoffPh },
    ],
    limits: ({ ph }) => ph,
  },
  {
    name: "salt ratio",
    group: "root zone",
    unit: "",
    decimals: 2,
    resolution: 0.01,
    leastSpan: 1,
    series: [{ role: "only", value: ratio }],
    limits: noLimits,
  },
  {
    name: "uptake",
    group: "plant",
    unit: "L a watering",
    decimals: 2,
    resolution: 0.01,
    leastSpan: 0.5,
    series: [{ role: "only", value: uptake }],
    limits: noLimits,
  },
  {
    name: "plant trouble",
    group: "plant",
    unit: "of 3",
    decimals: 0,
    resolution: 1,
    leastSpan: 3,
    series: [{ role: "only", value: plantLook }],
    limits: noLimits,
  },
  {
    name: "VPD",
    group: "air and water",
    unit: "kPa",
    decimals: 2,
    resolution: 0.01,
    leastSpan: 1,
    series: [{ role: "only", value: vapourDeficit }],
    limits: noLimits,
  },
  {
    name: "air temperature",
    group: "air and water",
    unit: "C",
    decimals: 1,
    resolution: quantities.airCelsius.resolution,
    leastSpan: 5,
    series: [{ role: "only", value: ({ airCelsius }) => airCelsius }],
    limits: noLimits,
    standsInFor: "VPD",
  },
  {
    name: "solution temperature",
    group: "air and water",
    unit: "C",
    decimals: 1,
    resolution: quantities.solutionCelsius.resolution,
    leastSpan: 5,
    series: [{ role: "only", value: ({ solutionCelsius }) => solutionCelsius }],
    limits: noLimits,
  },
];
