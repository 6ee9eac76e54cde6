import { bark, inert, mineralWool, soil, soilless, waterCulture } from "./ec-classes";
import { type EcBySample, type PhLimits } from "./limits";

/** All that the bands know of a medium; a new medium is a new row. */
export interface MediumRow {
  /** Other words of the trade for it. */
  readonly words: readonly string[];
  /**
   * Runoff pH; sources that speak of the medium's own pH are used for its runoff, which follows it within 0.2 to 0.3.
   */
  readonly ph: PhLimits;
  readonly ec: EcBySample;
}

/** Aims: peat [e-gro-lime], others common practice; the drain of crops in mineral wool [hemming-2019]. */
export const mediaTable = {
  coir: {
    words: [
      "coco",
      "cocos",
      "coco coir",
      "coconut coir",
      "coco peat",
      "cocopeat",
      "coco fibre",
      "coco fiber",
      "coconut",
      "coconut fibre",
      "coconut fiber",
      "coco perlite",
    ],
    ph: { low: 5.5, high: 6.5, aim: 5.8, source: "common practice" },
    ec: soilless,
  },
  peat: {
    words: [
      "peat mix",
      "peat moss",
      "peat lite",
      "peat perlite",
      "sphagnum",
      "soilless",
      "soilless mix",
      "potting mix",
      "potting soil",
      "potting compost",
      "growing mix",
    ],
    ph: { low: 5.4, high: 6.4, aim: 6.0, source: "[msu-substrate-ph], aim [e-gro-lime]" },
    ec: soilless,
  },
  bark: {
    words: ["pine bark", "bark mix", "fir bark", "bark chips"],
    ph: { low: 5.0, high: 6.0, aim: 5.5, source: "[sna-bmp-1997]" },
    ec: bark,
  },
  "mineral wool": {
    words: ["rock wool", "stone wool", "glass wool", "wool", "slab", "slabs"],
    ph: { low: 5.0, high: 6.5, aim: 5.7, source: "[hemming-2019], [contest-tomato-2020]" },
    ec: mineralWool,
  },
  inert: {
    words: ["clay pebbles", "expanded clay", "clay", "perlite", "pumice", "vermiculite", "sand", "gravel", "lava rock"],
    ph: { low: 5.0, high: 6.5, aim: 5.8, source: "as mineral wool, common practice" },
    ec: inert,
  },
  soil: {
    words: ["loam", "garden soil", "field soil", "top soil", "topsoil", "earth", "ground"],
    ph: { low: 6.2, high: 6.8, aim: 6.5, source: "common practice" },
    ec: soil,
  },
  "water culture": {
    words: [
      "dwc",
      "deep water culture",
      "nft",
      "nutrient film",
      "hydro",
      "hydroponics",
      "hydroponic",
      "water",
      "raft",
      "float",
      "deep flow",
      "aeroponics",
      "tank",
      "reservoir",
    ],
    ph: { low: 5.5, high: 6.5, aim: 5.8, source: "common practice" },
    ec: waterCulture,
  },
} as const satisfies Record<string, MediumRow>;

/** What the roots stand in. */
export type Medium = keyof typeof mediaTable;
export const media = Object.keys(mediaTable) as readonly Medium[];
