import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logUnits, loggedReading, type LogQuantity, type LogUnit, type NamedLogUnit, readLog } from "../../src/index";
import { times } from "./times";

const quantityIn = (unit: NamedLogUnit): LogQuantity => {
  if (unit === "pH") return "runoff pH";
  if (unit === "C" || unit === "F") return "air temperature";
  if (unit === "%" || unit === "share") return "humidity";
  return ["L", "mL", "gal", "qt", "fl oz"].includes(unit) ? "input volume" : "runoff EC";
};

const cell = fc.oneof(
  fc.constantFrom<string | number | boolean>(
    "1,8", "1.8 mS", "1,800", "~6.2", ">5", "nd", "n/a", "-", "55 %", "70 F", "21,5 °C", "500 ml", "1800 uS/cm", "900 ppm (500)", "900 ppm", "pH 5.9",
    "1.8/2.0", "high", "0", 0, 0.05, 0.4, 61, true, "#VALUE!", "",
  ),
  fc.double({ min: -10, max: 3000, noNaN: true }),
  fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), fc.constantFrom("", " mS/cm", " C", " L", " (cloudy)")).map(([value, unit]) => `${value}${unit}`),
);

/** What a computed column is given for the cell: a value, nothing, or a refusal. */
function computed(value: string | number | boolean, unit: NamedLogUnit): number | undefined {
  try {
    return loggedReading(value === "" ? undefined : value, unit);
  } catch {
    return undefined;
  }
}

describe("a column computed beside a log", () => {
  it("takes each cell that the reader takes, at the same value, and none that it leaves out: every unit, alone in its column", () => {
    fc.assert(fc.property(cell, fc.constantFrom(...logUnits), (value, unit) => {
      const quantity = quantityIn(unit);
      const asUnit: LogUnit = unit === "pH" ? "" : unit;
      const [row] = readLog({ cells: [["Date", "x", "Notes"], [45_383, value, "seen"]] }, { columns: { 1: { quantity, unit: asUnit } }, headerRow: 0 }).rows;
      const read = row?.runoffPh ?? row?.airCelsius ?? row?.humidityPercent ?? row?.inputLitres ?? row?.runoffEc;
      expect(computed(value, unit)).toBe(read);
    }), times(2000));
  });
});
