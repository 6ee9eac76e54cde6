import { type DrainedMedium } from "./container-table";

/** What a pot is washed with. */
export interface PourLiquid {
  readonly liquid: "a weak feed" | "plain water";
  /** Why, and what it has to hold. */
  readonly why: string;
  readonly source: string;
}

const plain: PourLiquid = {
  liquid: "plain water",
  why: "at the pH to pour at; the first feed comes after it",
  source: "common practice, no source",
};

/**
 * What to pour, by medium: coir and rootless media that hold nothing of their own are not washed with plain water.
 *
 * Source:   common practice: coir exchanges calcium and magnesium, which plain water takes from it
 */
export const pourLiquids: Readonly<Record<DrainedMedium, PourLiquid>> = {
  coir: {
    liquid: "a weak feed",
    why: "one that holds calcium and magnesium: plain water takes both out of coir",
    source: "common practice, no source",
  },
  "mineral wool": {
    liquid: "a weak feed",
    why: "this medium holds no nutrients of its own to live on",
    source: "common practice, no source",
  },
  inert: {
    liquid: "a weak feed",
    why: "this medium holds no nutrients of its own to live on",
    source: "common practice, no source",
  },
  peat: plain,
  bark: plain,
  soil: plain,
};
