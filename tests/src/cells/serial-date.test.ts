import { describe, expect, it } from "vitest";
import { isDay, partOfDay, serialOf } from "../../../src/cells/serial-date";

// The Gregorian calendar; serials by the platform's own clock, day 25,569 being 1 January 1970.
describe("isDay(year, month, day)", () => {
  it.each([
    [2024, 2, 29], [2000, 2, 29], [2025, 2, 28], [2024, 4, 30], [2025, 12, 31], [2025, 1, 1],
  ])("%i-%i-%i is a day", (year, month, day) => {
    expect(isDay(year, month, day)).toBe(true);
  });

  it.each([
    [2025, 2, 29], [2100, 2, 29], [2024, 2, 30], [2024, 4, 31], [2025, 4, 31],
    [2025, 13, 1], [2025, 0, 1], [2025, 1, 0],
  ])("%i-%i-%i is none", (year, month, day) => {
    expect(isDay(year, month, day)).toBe(false);
  });
});

describe("serialOf(year, month, day)", () => {
  it.each([
    [1970, 1, 1], [1999, 12, 31], [2000, 2, 29], [2000, 3, 1], [2024, 2, 29], [2024, 3, 1], [2025, 3, 1], [2100, 3, 1],
  ])("counts %i-%i-%i as the platform does", (year, month, day) => {
    expect(serialOf(year, month, day)).toBe(Date.UTC(year, month - 1, day) / 86_400_000 + 25_569);
  });
});

it("partOfDay(6, 0) is a quarter, and 1:30:30 is 5430 seconds of 86,400", () => {
  expect([partOfDay(6, 0), partOfDay(1, 30, 30)]).toEqual([0.25, 5430 / 86_400]);
});
