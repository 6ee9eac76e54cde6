import { describe, expect, it } from "vitest";
import { readText } from "./case-log";
import { cropFigures } from "./crop-figures";
import { openCrops } from "./open-crops";

const { crops } = openCrops();
const figures = crops.map((crop) => [crop.name, crop, cropFigures(crop)] as const);
const kept = figures.filter(([, crop]) => crop.keptBy === "growers");

describe("open data of professionally run crops", () => {
  it.each(figures)("%s: every line of its log is read, and judged as a day", (_, { log }, { days, verdicts }) => {
    const { rows, questions } = readText(log);
    expect(questions).toEqual([]);
    expect(rows.length).toBe(log.length - 1);
    expect([...verdicts.values()].reduce((sum, each) => sum + each, 0)).toBe(days);
  });

  it("over the growers' two compartments no day is told to flush", () => {
    expect(kept.map(([, , { days }]) => days)).toEqual([10, 36]);
    for (const [name, , { toldToFlush }] of kept) expect(toldToFlush, name).toBe(0);
  });

  it("and fewer than one of their days in five is called salty", () => {
    const [days, salty] = (["days", "flaggedForSalt"] as const).map((name) =>
      kept.reduce((sum, [, , found]) => sum + found[name], 0));
    expect((salty ?? NaN) / (days ?? NaN)).toBeLessThan(0.2);
  });

  it("the one real build-up, drain 9.1 and 9.6 on feeds of 4.9 and 4.5, is named on both days", () => {
    const [found] = figures.filter(([, { buildup }]) => buildup !== undefined);
    expect(found?.[2]).toMatchObject({ buildupDays: 2, buildupNamed: 2 });
  });
});
