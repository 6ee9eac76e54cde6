import { isAbove } from "../../maths/compare";
import { type Alkalinity, isPlausible, type Litres, type Ph, quantities } from "../../quantities";
import { Refusal } from "../../refusal";

/** The water to be treated. */
export interface TreatedWater {
  readonly litres: Litres;
  readonly alkalinity: Alkalinity;
  readonly phNow: Ph;
}

/** How much to measure out, with what must be known before pouring. */
export interface Dose {
  /** By the equilibrium, unrounded. */
  readonly exact: number;
  /** Two figures, rounded down: too little can be topped up, too much cannot be taken out. */
  readonly measured: number;
  readonly unit: "mL" | "g";
  readonly reasons: readonly [string, ...string[]];
}

/** No crop in a pot is helped by water outside these. Common practice. */
const targetPh: readonly [low: number, high: number] = [4.5, 7.5];
const figures = 2;
/** So that 80 as the machine writes it, 79.99999999, stays 80. */
const roundOff = 1e-9;
const firstShare = 0.8;

/** Rounded down to two figures. */
export function measurable(amount: number): number {
  if (!(amount > 0)) return 0;
  const known = amount * (1 + roundOff);
  const step = 10 ** (Math.floor(Math.log10(known)) + 1 - figures);
  return Number((Math.floor(known / step) * step).toPrecision(figures));
}

/** The smallest mark of a small syringe or a cheap balance, mL or g. Common practice. */
const smallestMark = 0.1;

/** The cautions that stand beside every dose. */
export const cautions = (measured: number, unit: string): readonly [string, ...string[]] => [
  measured === 0
    ? "nothing to add: the water is at the target"
    : `measure out ${measured} ${unit} (rounded down), stir in the first 80 %, ${measurable(measured * firstShare)} ${unit}, measure the pH, then finish little by little`,
  ...(measured > 0 && measured < smallestMark ? ["that is too little to measure well: treat more water at once"] : []),
  "alkalinity and pH now must be of the same water, the raw water before any feed; reckoned at 25 C, colder water takes more",
  "wear goggles and chemical-proof gloves, with running water at hand",
  "the label and local code win over this figure",
];

/** Refuses water that cannot be believed, or a target that no pot wants. */
export function checkWater(water: TreatedWater, target: Ph): void {
  const [low, high] = targetPh;
  if (!(target >= low && target <= high)) {
    throw new Refusal("outside-validity", { quantity: "target pH", given: target, allowed: `${low} to ${high}` });
  }
  believable(water.phNow, "ph", "pH now");
  if (water.alkalinity > quantities.alkalinity.plausible[1]) believable(water.alkalinity, "alkalinity", "alkalinity");
}

function believable(given: number, name: "ph" | "alkalinity", called: string): void {
  if (isPlausible(given, name)) return;
  const { plausible, unit } = quantities[name];
  throw new Refusal("implausible", { quantity: called, given, unit, allowed: `${plausible[0]} to ${plausible[1]}` });
}

/** Refuses a target on the far side of the pH now: that is the other function's work. */
export function checkDirection(target: Ph, now: Ph, wanted: "below" | "above"): void {
  const { resolution } = quantities.ph;
  const wrong = wanted === "below" ? isAbove(target, now, resolution) : isAbove(now, target, resolution);
  if (!wrong) return;
  const other = wanted === "below" ? "ALKALIDOSE raises it" : "ACIDDOSE lowers it";
  throw new Refusal("order", {
    quantity: "target pH",
    given: target,
    allowed: `${wanted} the pH now, ${now}; ${other}`,
  });
}
