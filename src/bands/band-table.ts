import { type Feeder, type Medium } from "./media";

export interface BandLimits {
  readonly low: number;
  readonly high: number;
  /** A key of docs/sources.md, or "common practice" where there is none. */
  readonly source: string;
}

/** Runoff pH by medium. Sources that speak of the medium's own pH are used for its runoff, which follows it within 0.2 to 0.3. */
export const phBands: Readonly<Record<Medium, BandLimits>> = {
  coir: { low: 5.5, high: 6.5, source: "common practice" },
  peat: { low: 5.4, high: 6.4, source: "[msu-substrate-ph]" },
  bark: { low: 5.0, high: 6.0, source: "[sna-bmp-1997]" },
  "mineral wool": { low: 5.5, high: 6.0, source: "common practice" },
  inert: { low: 5.5, high: 6.0, source: "common practice" },
  soil: { low: 6.2, high: 6.8, source: "common practice" },
};

const pourThrough = {
  light: { low: 1.0, high: 2.6, source: "[ncsu-pourthru]" },
  medium: { low: 2.0, high: 3.5, source: "[ncsu-pourthru]" },
  heavy: { low: 2.6, high: 4.6, source: "[ncsu-pourthru]" },
} as const satisfies Record<Feeder, BandLimits>;

/**
 * Runoff EC in mS/cm at 25 C by medium and feeder, for runoff collected after an ordinary irrigation or by pour-through.
 * A saturated extract or a 1:2 extract of the same pot reads differently: never compare across methods.
 */
export const ecBands: Readonly<Record<Medium, Readonly<Record<Feeder, BandLimits>>>> = {
  coir: pourThrough,
  peat: pourThrough,
  bark: {
    light: { low: 0.2, high: 0.5, source: "[sna-bmp-1997]" },
    medium: { low: 0.5, high: 1.0, source: "[sna-bmp-1997]" },
    heavy: { low: 0.5, high: 2.0, source: "common practice" },
  },
  "mineral wool": {
    light: { low: 1.0, high: 2.5, source: "common practice" },
    medium: { low: 1.5, high: 3.5, source: "common practice" },
    heavy: { low: 2.0, high: 4.5, source: "common practice" },
  },
  inert: {
    light: { low: 0.8, high: 2.0, source: "common practice" },
    medium: { low: 1.2, high: 2.8, source: "common practice" },
    heavy: { low: 1.8, high: 3.5, source: "common practice" },
  },
  soil: {
    light: { low: 0.5, high: 2.0, source: "common practice" },
    medium: { low: 0.8, high: 3.0, source: "common practice" },
    heavy: { low: 1.2, high: 4.0, source: "common practice" },
  },
};
