import { describe, expect, it } from "vitest";
import { ec25, litres, saltKept } from "../../../src/index";

describe("saltKept", () => {
  it("one acre-foot (1 233 482 L) at 1.15 dS/m brings about one short ton of salt, 907.2 kg, per acre (UC ANR 8550)", () => {
    const thousandth = saltKept({ ec: ec25(1.15), litres: litres(1233.482) }, { ec: ec25(0), litres: litres(0) });
    expect(Math.abs(thousandth - 907.185) / 907.185).toBeLessThan(0.002);
  });

  it("a bed without uptake at steady state keeps nothing: LF 0.25, runoff at 4 times the input", () => {
    expect(saltKept({ ec: ec25(1.5), litres: litres(8) }, { ec: ec25(6), litres: litres(2) })).toBeCloseTo(0, 12);
  });

  it("refuses more runoff than input", () => {
    expect(() => saltKept({ ec: ec25(1.5), litres: litres(2) }, { ec: ec25(6), litres: litres(3) })).toThrow("at most the input volume 2");
  });
});
