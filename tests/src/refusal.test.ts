import { describe, expect, it } from "vitest";
import { airCelsius, humidityPercent, Refusal, vapourPressureDeficit } from "../../src/index";
import { expectRefusal } from "./refused";

describe("Refusal: its text", () => {
  it("leaves no gap where nothing came", () => {
    expect(new Refusal("impossible", { quantity: "columns of 2 and 3 readings" }).message).toBe("columns of 2 and 3 readings cannot be: check the reading");
    expect(new Refusal("impossible", { quantity: "pH", given: 15 }).message).toBe("pH 15 cannot be: check the reading");
  });

  it("counts 1 reading as one", () => {
    expect(new Refusal("not-enough-readings", { quantity: "days", given: 1, allowed: "2" }).message).toBe("days: 1 reading is too few: at least 2 needed");
  });

  it("VPD: air of -5 C without a leaf is refused as the air's temperature", () => {
    expectRefusal(() => vapourPressureDeficit(airCelsius(-5), humidityPercent(50)), "outside-validity", "air temperature -5 C");
  });
});
