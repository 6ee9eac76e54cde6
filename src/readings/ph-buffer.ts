import { interpolated } from "../maths/interpolate";
import { type Celsius, type Ph } from "../quantities";
import { Refusal } from "../refusal";
import { bufferCelsius, type BufferName, buffers } from "./buffer-table";

/**
 * pH of a calibration buffer at its temperature.
 *
 * Feeds every calibration and check of a pH meter: a buffer is what its label says at 25 C only.
 *
 * Formula:  straight line between the two neighbouring rows of the table, which are 3 to 10 C apart (within 0.002 pH)
 * Valid:    0 to 50 C; outside: refuses
 * Source:   [iupac-ph-2002] table 2; [technical-buffers] for 7.00, and 7.01 as 0.01 above it
 *
 * @param buffer the pH on the bottle's label
 * @param celsius C of the buffer
 * @returns pH
 * @throws {Refusal} `outside-validity` below 0 or above 50 C
 * @example phBuffer("7.00", solutionCelsius(15)) // 7.036
 */
export function phBuffer(buffer: BufferName, celsius: Celsius): Ph {
  const ph = interpolated(bufferCelsius, buffers[buffer], celsius);
  if (ph !== undefined) return ph as Ph;
  throw new Refusal("outside-validity", {
    quantity: "buffer temperature",
    given: celsius,
    unit: "C",
    allowed: "0 to 50 C",
  });
}

/**
 * The buffer that a text or number on a label names.
 *
 * @throws {Refusal} `unknown-choice`, listing the buffers
 * @example bufferNamed("pH 7") // "7.00"
 */
export function bufferNamed(text: string): BufferName {
  const names = Object.keys(buffers) as BufferName[];
  const label = text.trim().toLowerCase().replace(/^ph\s*/, "");
  const value = Number(label);
  const found = value === 4 ? "4.01" : names.find((name) => Number(name) === value);
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "buffer", given: text, allowed: names.join(", ") });
}
