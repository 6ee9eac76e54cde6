import { type Medium } from "../bands/media-table";
import { Refusal } from "../refusal";

/** A medium that water can run through; a tank without a drain is diluted or changed instead. */
export type DrainedMedium = Exclude<Medium, "water culture">;

/** How a medium holds and mixes water: starting values, which the grower's own flush readings replace. */
export interface Washing {
  /** Share of the pot's volume that is water after it has drained: 0 to 1. */
  readonly shareHeld: number;
  /** Share of poured water that mixes with what is held instead of running past it: 0 to 1. */
  readonly mixing: number;
  /** Container capacities of water beyond which a flush no longer pays and roots only stand wet. */
  readonly capacitiesLimit: number;
  readonly source: string;
}

/**
 * Removal of the old solution falls off after 1 to 1.5 container capacities [kerr-1983]; past 3 the model gains under 5
 * %.
 */
const soillessCapacities = 3;

/** Soil drains slowly and gives its salts back slowly, so the gentler course ends sooner. Common practice. */
const soilCapacities = 2;

const soilless = { capacitiesLimit: soillessCapacities } as const;

/**
 * Water held follows published container capacities (43 to 65 % of volume in pots of soilless mix); mixing is a
 * judgement between the fully mixed pot (1) and water that runs down the walls (0).
 */
export const washingTable: Readonly<Record<DrainedMedium, Washing>> = {
  coir: { shareHeld: 0.65, mixing: 0.7, ...soilless, source: "common practice, no source" },
  peat: { shareHeld: 0.65, mixing: 0.7, ...soilless, source: "[sna-bmp-1997] for water held; mixing common practice" },
  bark: { shareHeld: 0.5, mixing: 0.6, ...soilless, source: "[sna-bmp-1997] for water held; mixing common practice" },
  "mineral wool": { shareHeld: 0.8, mixing: 0.85, ...soilless, source: "common practice, no source" },
  inert: { shareHeld: 0.3, mixing: 0.6, ...soilless, source: "common practice, no source" },
  soil: { shareHeld: 0.35, mixing: 0.4, capacitiesLimit: soilCapacities, source: "common practice, no source" },
};

export const drainedMedia = Object.keys(washingTable) as readonly DrainedMedium[];

/** How a medium washes. @throws {Refusal} `unknown-choice` for a tank without a drain */
export function washingOf(medium: Medium): Washing {
  if (medium !== "water culture") return washingTable[medium];
  const allowed = `${drainedMedia.join(", ")}; a tank without a drain is diluted or changed (DILUTION, SWAPOUT), not flushed`;
  throw new Refusal("unknown-choice", { quantity: "medium to flush", given: medium, allowed });
}
