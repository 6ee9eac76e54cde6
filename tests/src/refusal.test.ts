import { describe, expect, it } from "vitest";
import { airCelsius, humidityPercent, Refusal, type RefusalCode, vapourPressureDeficit } from "../../src/index";
import { expectRefusal } from "./refused";

describe("Refusal: its text", () => {
  it("leaves no gap where nothing came", () => {
    expect(new Refusal("impossible", { quantity: "columns of 2 and 3 readings" }).message).toBe("columns of 2 and 3 readings cannot be: check the reading");
    expect(new Refusal("impossible", { quantity: "pH", given: 15 }).message).toBe("pH 15 cannot be: check the reading");
  });

  it("counts 1 reading as one", () => {
    expect(new Refusal("not-enough-readings", { quantity: "days", given: 1, allowed: "2" }).message).toBe("days: 1 reading is too few: at least 2 needed");
  });

  const known = { quantity: "runoff EC", given: 7, unit: "mS/cm", allowed: "2 to 3.5" };
  it.each<[RefusalCode, string, string]>([
    ["missing", "runoff EC is missing: measure it, or leave the row empty", "runoff EC is missing: measure it, or leave the row empty"],
    ["not-a-number", 'runoff EC "7" is not a number: type it as a plain number such as 1.8', 'runoff EC "" is not a number: type it as a plain number such as 1.8'],
    ["wrong-unit", "runoff EC 7 mS/cm looks like another unit: expected 2 to 3.5", "runoff EC looks like another unit: check the unit"],
    ["impossible", "runoff EC 7 mS/cm cannot be: it must be 2 to 3.5", "runoff EC cannot be: check the reading"],
    ["implausible", "runoff EC 7 mS/cm is hard to believe: usual is 2 to 3.5; measure again", "runoff EC is hard to believe: measure again"],
    ["outside-validity", "runoff EC 7 mS/cm is outside what this formula holds for: it holds for 2 to 3.5", "runoff EC is outside what this formula holds for: no number is given"],
    ["not-enough-readings", "runoff EC: 7 readings are too few: at least 2 to 3.5 needed", "runoff EC: 0 readings are too few: at least one more needed"],
    ["unknown-choice", 'runoff EC "7" is not known: choose 2 to 3.5', 'runoff EC "" is not known: choose another'],
    ["order", "runoff EC 7 mS/cm is out of order: it must be 2 to 3.5", "runoff EC is out of order: it must be in order"],
  ])("%s: what came, what is allowed, what to do; without the middle two no gap", (code, full, bare) => {
    expect([new Refusal(code, known).message, new Refusal(code, { quantity: "runoff EC" }).message]).toEqual([full, bare]);
  });

  it("tells what to do next instead, where the catalogue's own advice does not fit", () => {
    const refusal = new Refusal("impossible", { ...known, next: "ask" });
    expect([refusal.message, refusal.name, refusal.code, refusal.details.given]).toEqual(["runoff EC 7 mS/cm cannot be: ask", "Refusal", "impossible", 7]);
  });

  it("0 that came is told as 0", () => {
    expect(new Refusal("impossible", { quantity: "rate", given: 0 }).message).toBe("rate 0 cannot be: check the reading");
  });

  it("VPD: air of -5 C without a leaf is refused as the air's temperature", () => {
    expectRefusal(() => vapourPressureDeficit(airCelsius(-5), humidityPercent(50)), "outside-validity", "air temperature -5 C");
  });
});
