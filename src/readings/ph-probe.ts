import { type Celsius, type Millivolts } from "../quantities";
import { Refusal } from "../refusal";
import { type BufferName } from "./buffer-table";
import { nernstSlope } from "./nernst-slope";
import { phBuffer } from "./ph-buffer";

/** What the electrode shows in one buffer. */
export interface BufferReading {
  readonly buffer: BufferName;
  readonly millivolts: Millivolts;
}

/** The straight line of an electrode. */
export interface ProbeLine {
  /** % of what a perfect electrode gives at that temperature. */
  readonly slopePercent: number;
  /** mV at pH 7, 0 in a perfect electrode. */
  readonly offsetMillivolts: number;
}

/** Closer than this two buffers say nothing about a slope; common practice asks for about 3. */
const leastPhApart = 1;
/** Slope that electrodes are accepted at, % of Nernst [probe-acceptance]. */
export const acceptedSlope: readonly [number, number] = [85, 105];
/** Where a pH electrode is built to show 0 mV. */
const neutralPh = 7;

/**
 * Slope (% of Nernst) and offset (mV at pH 7) of a pH electrode from its readings in two buffers.
 *
 * Feeds the trust in every pH of the log. The temperature corrects the electrode's slope and the buffers' own pH; it
 * does not correct a sample's pH.
 *
 * Formula:  slope = (mVa - mVb) / (pHb - pHa) / Nernst slope; offset = mVa + mV per pH (pHa - 7)
 * Valid:    buffers at least 1 pH apart, both at one temperature from 0 to 50 C; outside: refuses
 * Source:   Nernst's equation; buffers [iupac-ph-2002]
 *
 * @throws {Refusal} `impossible` when the buffers are too close; `order` for mV that look exchanged; `outside-validity`
 *   as `phBuffer`
 * @example probeLine({ buffer: "7.00", millivolts: millivolts(-15) }, { buffer: "4.01", millivolts: millivolts(160) }, solutionCelsius(25)).offsetMillivolts // -15
 */
export function probeLine(a: BufferReading, b: BufferReading, celsius: Celsius): ProbeLine {
  const phA = phBuffer(a.buffer, celsius);
  const phB = phBuffer(b.buffer, celsius);
  if (!(Math.abs(phB - phA) >= leastPhApart)) {
    throw new Refusal("impossible", {
      quantity: "a slope from buffers",
      given: `${a.buffer} and ${b.buffer}`,
      allowed: "from two buffers at least 1 pH apart, such as 7.00 and 4.01",
    });
  }
  const perPh = (a.millivolts - b.millivolts) / (phB - phA);
  const slopePercent = (perPh / nernstSlope(celsius)) * 100;
  notExchanged(a, b, slopePercent);
  return { slopePercent, offsetMillivolts: a.millivolts + perPh * (phA - neutralPh) };
}

/** A slope that would be accepted the other way round is a sound electrode whose two mV stand in each other's place. */
function notExchanged(a: BufferReading, b: BufferReading, slopePercent: number): void {
  const [low, high] = acceptedSlope;
  if (!(-slopePercent >= low && -slopePercent <= high)) return;
  const allowed = `falling as pH rises: ${a.millivolts} mV in ${a.buffer} and ${b.millivolts} in ${b.buffer} look exchanged`;
  throw new Refusal("order", { quantity: "mV in the two buffers", allowed });
}
