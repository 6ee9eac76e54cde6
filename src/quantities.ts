import { Refusal } from "./refusal";

/**
 * What one quantity means, and which of its values can be (physics), are believable (a pot), and can be told apart (a
 * meter).
 */
export interface Quantity {
  /** In the words of the person at the pot. */
  readonly called: string;
  readonly unit: string;
  /** Outside this no reading can be: refused as `impossible`. */
  readonly physical: readonly [low: number, high: number];
  /** Outside this a reading is answered but flagged: `implausible`. */
  readonly plausible: readonly [low: number, high: number];
  /** Decimals worth showing. */
  readonly decimals: number;
  /** The smallest step a bench meter shows; comparisons with a limit are made at it. */
  readonly resolution: number;
}

/**
 * The one table of quantities.
 *
 * EC: above 200 mS/cm no water-based feed or runoff exists (saturated NaCl is about 250 mS/cm); such a figure is uS/cm
 * or ppm typed into an mS/cm column. Believable runoff ends near 20 mS/cm. A temperature coefficient below 0.5 % per C
 * is one written as a share (0.0191 for 1.91), which would correct nothing. Limits: common practice; resolutions: bench
 * meters.
 */
export const quantities = {
  ec: { called: "EC", unit: "mS/cm", physical: [0, 200], plausible: [0.1, 20], decimals: 2, resolution: 0.01 },
  ph: { called: "pH", unit: "", physical: [0, 14], plausible: [3, 10], decimals: 2, resolution: 0.01 },
  ppm: { called: "ppm", unit: "ppm", physical: [0, 200_000], plausible: [50, 14_000], decimals: 0, resolution: 10 },
  ppmScale: {
    called: "ppm scale",
    unit: "ppm per mS/cm",
    physical: [400, 1000],
    plausible: [480, 720],
    decimals: 0,
    resolution: 1,
  },
  solutionCelsius: {
    called: "solution temperature",
    unit: "C",
    physical: [-5, 100],
    plausible: [5, 40],
    decimals: 1,
    resolution: 0.1,
  },
  airCelsius: {
    called: "air temperature",
    unit: "C",
    physical: [-50, 70],
    plausible: [5, 45],
    decimals: 1,
    resolution: 0.1,
  },
  humidityPercent: {
    called: "relative humidity",
    unit: "%",
    physical: [0, 100],
    plausible: [15, 100],
    decimals: 0,
    resolution: 1,
  },
  litres: {
    called: "volume",
    unit: "L",
    physical: [0, 1_000_000],
    plausible: [0, 2_000],
    decimals: 2,
    resolution: 0.01,
  },
  saltRatio: {
    called: "salt ratio",
    unit: "",
    physical: [0, 100],
    plausible: [0.2, 20],
    decimals: 2,
    resolution: 0.01,
  },
  leachingFraction: {
    called: "leaching fraction",
    unit: "",
    physical: [0, 1],
    plausible: [0, 0.6],
    decimals: 2,
    resolution: 0.01,
  },
  alkalinity: {
    called: "alkalinity",
    unit: "mg/L as CaCO3",
    physical: [0, 5_000],
    plausible: [5, 500],
    decimals: 0,
    resolution: 5,
  },
  percentPerCelsius: {
    called: "temperature coefficient",
    unit: "% per C",
    physical: [0.5, 10],
    plausible: [1.5, 2.5],
    decimals: 2,
    resolution: 0.01,
  },
  millivolts: {
    called: "electrode reading",
    unit: "mV",
    physical: [-1000, 1000],
    plausible: [-500, 500],
    decimals: 0,
    resolution: 1,
  },
  sheetDate: {
    called: "date",
    unit: "",
    physical: [1, 2_958_465],
    plausible: [36_526, 73_050],
    decimals: 0,
    resolution: 1,
  },
  days: { called: "days", unit: "days", physical: [0, 36_525], plausible: [0, 3_650], decimals: 0, resolution: 1 },
  hours: { called: "hours", unit: "h", physical: [0, 24], plausible: [4, 24], decimals: 1, resolution: 0.1 },
  photonFlux: {
    called: "PPFD",
    unit: "umol/m2 s",
    physical: [0, 5_000],
    plausible: [10, 2_200],
    decimals: 0,
    resolution: 1,
  },
  dailyLight: {
    called: "daily light integral",
    unit: "mol/m2 a day",
    physical: [0, 100],
    plausible: [1, 65],
    decimals: 1,
    resolution: 0.1,
  },
  waterings: {
    called: "waterings a day",
    unit: "",
    physical: [0, 100],
    plausible: [0.1, 50],
    decimals: 1,
    resolution: 0.1,
  },
  labelPercent: {
    called: "label analysis",
    unit: "%",
    physical: [0, 100],
    plausible: [0.01, 65],
    decimals: 2,
    resolution: 0.01,
  },
  gramsPerLitre: {
    called: "fertiliser",
    unit: "g/L",
    physical: [0, 1_000],
    plausible: [0.05, 300],
    decimals: 2,
    resolution: 0.01,
  },
  stockStrength: {
    called: "EC per mL of stock per L",
    unit: "mS/cm",
    physical: [0, 100],
    plausible: [0.05, 2],
    decimals: 3,
    resolution: 0.001,
  },
} as const satisfies Record<string, Quantity>;

export type QuantityName = keyof typeof quantities;

declare const unit: unique symbol;
/** A number that carries its unit in its type, so that two quantities cannot be mixed up and still compile. */
type Measured<Unit extends string> = number & { readonly [unit]: Unit };

/** mS/cm, corrected to 25 C. */
export type Ec25 = Measured<"mS/cm at 25 C">;
/** mS/cm at the solution's own temperature, as a meter without compensation shows it. */
export type EcAsRead = Measured<"mS/cm as read">;
export type Ph = Measured<"pH">;
export type Ppm = Measured<"ppm">;
/** ppm per mS/cm: 500, 640 or 700. */
export type PpmScale = Measured<"ppm per mS/cm">;
export type Celsius = Measured<"C">;
export type Litres = Measured<"L">;
/** A part of a whole, 0 to 1. */
export type Share = Measured<"0 to 1">;
export type Percent = Measured<"%">;
/** mV between the electrode's poles, as a pH meter shows it in its mV mode. */
export type Millivolts = Measured<"mV">;
/** A day as a spreadsheet counts it, from 1 = 1 January 1900. */
export type SheetDate = Measured<"sheet date">;
export type Days = Measured<"days">;
export type Hours = Measured<"h">;
/** Photons for photosynthesis reaching a square metre in a second, umol. */
export type PhotonFlux = Measured<"umol/m2 s">;
/** Photons for photosynthesis reaching a square metre in a day. */
export type DailyLight = Measured<"mol/m2 a day">;
export type GramsPerLitre = Measured<"g/L">;
/** mS/cm that one mL of a concentrate adds to one litre. */
export type StockStrength = Measured<"mS/cm per mL/L">;
/** mg/L as CaCO3. */
export type Alkalinity = Measured<"mg/L as CaCO3">;

const range = ([low, high]: readonly [number, number]): string => `${low} to ${high}`;

/**
 * Turns a plain number into a measured one, or refuses it; it carries its unit, and the limits that it holds the number
 * to.
 */
export interface Check<T extends number> {
  (value: number, called?: string): T;
  readonly physical: readonly [low: number, high: number];
  readonly unit: string;
}

/** The check of one quantity, written so that NaN fails too. */
function checked<T extends number>(quantity: Quantity): Check<T> {
  const [low, high] = quantity.physical;
  const check = (value: number, called: string = quantity.called): T => {
    // A sheet knows no -0, and an answer must not show one.
    if (value >= low && value <= high) return (value + 0) as T;
    throw refusedValue(value, called, quantity);
  };
  return Object.assign(check, { physical: quantity.physical, unit: quantity.unit });
}

function refusedValue(value: number, called: string, quantity: Quantity): Refusal {
  const details = { quantity: called, given: value, unit: quantity.unit, allowed: range(quantity.physical) };
  if (Number.isNaN(value)) return new Refusal("not-a-number", details);
  const likelyOtherUnit = quantity === quantities.ec && value > quantity.physical[1];
  return likelyOtherUnit
    ? new Refusal("wrong-unit", { ...details, allowed: "mS/cm; divide uS/cm by 1000" })
    : new Refusal("impossible", details);
}

export const ec25 = checked<Ec25>(quantities.ec);
export const ecAsRead = checked<EcAsRead>(quantities.ec);
export const ph = checked<Ph>(quantities.ph);
export const ppm = checked<Ppm>(quantities.ppm);
export const ppmScale = checked<PpmScale>(quantities.ppmScale);
export const solutionCelsius = checked<Celsius>(quantities.solutionCelsius);
export const airCelsius = checked<Celsius>(quantities.airCelsius);
export const humidityPercent = checked<Percent>(quantities.humidityPercent);
export const litres = checked<Litres>(quantities.litres);
export const leachingShare = checked<Share>(quantities.leachingFraction);
export const alkalinity = checked<Alkalinity>(quantities.alkalinity);
export const percentPerCelsius = checked<Percent>(quantities.percentPerCelsius);
export const millivolts = checked<Millivolts>(quantities.millivolts);
export const sheetDate = checked<SheetDate>(quantities.sheetDate);
export const days = checked<Days>(quantities.days);
export const hours = checked<Hours>(quantities.hours);
export const photonFlux = checked<PhotonFlux>(quantities.photonFlux);
export const dailyLightIntegral = checked<DailyLight>(quantities.dailyLight);
export const labelPercent = checked<Percent>(quantities.labelPercent);
export const gramsPerLitre = checked<GramsPerLitre>(quantities.gramsPerLitre);
export const stockStrength = checked<StockStrength>(quantities.stockStrength);

/** Whether a possible reading is also believable; a ghost reading (EC 0.04, pH 0.1) is not. */
export function isPlausible(value: number, name: QuantityName): boolean {
  // By place: a column asks half a million times, and taking the pair apart would cost as much as the rest of a row.
  const { plausible } = quantities[name];
  return value >= plausible[0] && value <= plausible[1];
}

/** A value as a person would write it, with its unit: "4.6 mS/cm", "pH 5.3". */
export function written(value: number, name: QuantityName): string {
  const { unit, decimals } = quantities[name];
  const digits = String(Number(value.toFixed(decimals)));
  if (name === "ph") return `pH ${digits}`;
  return unit === "" ? digits : `${digits} ${unit}`;
}

/** A number without a quantity, as a person would write it: two decimals, and three digits where it is below 1. */
export function rounded(value: number): string {
  return String(Number(Math.abs(value) < 1 ? value.toPrecision(3) : value.toFixed(2)));
}
