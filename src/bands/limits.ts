/** A pair of limits and where it comes from. */
export interface BandLimits {
  readonly low: number;
  readonly high: number;
  /** A key of docs/sources.md, or "common practice" where there is none. */
  readonly source: string;
}

/** Limits of pH, and the pH to pour at. */
export interface PhLimits extends BandLimits {
  readonly aim: number;
}

/** How much feed the plant takes. */
export const feeders = ["light", "medium", "heavy"] as const;
export type Feeder = (typeof feeders)[number];

/**
 * How the sample was taken: what runs off at an ordinary watering, after a small measured pour, or by an extract of
 * the medium.
 */
export const samples = ["drain", "pour-through", "1:2 extract", "saturated extract"] as const;
export type Sample = (typeof samples)[number];

/** EC limits in mS/cm at 25 C for each feeder. */
export type EcLimits = Readonly<Record<Feeder, BandLimits>>;

/** EC limits by how the sample was taken; a way that tells nothing about a medium is left out. */
export type EcBySample = Readonly<Partial<Record<Sample, EcLimits>>> & { readonly drain: EcLimits };
