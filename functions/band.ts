import { type Band, bandNamed, ec25, ownBand, ph, Refusal } from "../src/index";
import { type Cells, content, reading, shapeOf } from "./cells";

/**
 * The band a worksheet function was given: a text, or four cells with the grower's own limits. `undefined` when blank.
 */
export function bandIn(cells: Cells | null | undefined): Band | undefined {
  const flat = (cells ?? []).flat();
  if (flat.length === 4) return fourLimits(flat);
  if (flat.length > 1) {
    throw new Refusal("impossible", {
      quantity: "band",
      given: `of ${shapeOf(cells ?? [])} cells`,
      allowed: "one text, or four cells: pH low, pH high, EC low, EC high",
    });
  }
  const text = content(flat[0]);
  return text === undefined || text === 0 ? undefined : bandNamed(String(text));
}

function fourLimits(cells: readonly unknown[]): Band | undefined {
  const limits = [
    reading(null, ph, "pH low limit").read(cells[0]),
    reading(null, ph, "pH high limit").read(cells[1]),
    reading(null, ec25, "runoff EC low limit").read(cells[2]),
    reading(null, ec25, "runoff EC high limit").read(cells[3]),
  ] as const;
  const [phLow, phHigh, ecLow, ecHigh] = limits;
  if (limits.every((limit) => limit === undefined)) return undefined;
  if (phLow === undefined || phHigh === undefined || ecLow === undefined || ecHigh === undefined) {
    throw new Refusal("missing", {
      quantity: "one of the four band limits",
      next: "fill in pH low, pH high, EC low, EC high",
    });
  }
  return ownBand(phLow, phHigh, ecLow, ecHigh);
}
