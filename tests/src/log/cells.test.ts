import { describe, expect, it } from "vitest";
import { readLog } from "../../../src/index";

type Found = readonly [value: number | undefined, said: "" | "doubt" | "left out"];

/** What one cell under a header is read as, among ordinary neighbours. */
function cellUnder(header: string, cell: unknown, usual: unknown, field: "runoffEc" | "runoffPh" | "inputLitres" | "solutionCelsius" | "humidityPercent"): Found {
  const rows = [cell, usual, usual, usual].map((value, day) => [45_383 + day, value, "seen"]);
  const reading = readLog({ cells: [["Date", header, "Notes"], ...rows] });
  const problem = reading.problems.find(({ row, column }) => row === 1 && column === 1);
  return [reading.rows[0]?.[field], problem === undefined ? "" : problem.used ? "doubt" : "left out"];
}

// What a person reads in such a cell. Common practice, no source.
describe("a cell among ordinary readings", () => {
  it.each<[unknown, number | undefined, Found[1]]>([
    [1.8, 1.8, ""], ["1.8", 1.8, ""], ["1,8", 1.8, ""], [" 1.8 ", 1.8, ""], ["1.80", 1.8, ""], [".8", 0.8, ""], ["1,800", 1.8, ""], ["+1.8", 1.8, ""],
    ["1.8 mS", 1.8, ""], ["1.8mS/cm", 1.8, ""], ["1800 uS/cm", 1.8, ""], ["1800 µS", 1.8, ""], ["1800 μS/cm", 1.8, ""], ["900 ppm (500)", 1.8, ""],
    ["~1.8", 1.8, "doubt"], ["ca. 1,8", 1.8, "doubt"], ["1.8?", 1.8, "doubt"], ["1.8*", 1.8, "doubt"], ["1.8 (cloudy)", 1.8, "doubt"],
    [20.5, undefined, "left out"], [24, undefined, "left out"], [12, 12, ""], [19.9, 19.9, "doubt"],
    [">5", undefined, "left out"], ["<0.3", undefined, "left out"], ["≥ 5", undefined, "left out"], ["1.8-2.0", undefined, "left out"],
    ["1.8/2.0", undefined, "left out"], ["1.8 2.0", undefined, "left out"], ["error 3", undefined, "left out"], ["high", undefined, "left out"],
    ["900 ppm", undefined, "left out"], ["22 °C", undefined, "left out"], [0, undefined, "left out"], [-1, undefined, "left out"],
    [0.07, undefined, "left out"], [2400, undefined, "left out"], [250, undefined, "left out"], [true, undefined, "left out"],
    ["#VALUE!", undefined, "left out"], ["1.2.3", undefined, "left out"], ["½", undefined, "left out"], ["1e999", undefined, "left out"],
    ["NA", undefined, ""], ["n/a", undefined, ""], ["-", undefined, ""], ["–", undefined, ""], ["NaN", undefined, ""], [Number.NaN, undefined, ""],
    ["not measured", undefined, ""], ["", undefined, ""], [null, undefined, ""],
  ])("runoff EC in mS/cm near 2.4: %j is %j %s", (cell, value, said) => {
    expect(cellUnder("Runoff EC mS/cm", cell, 2.4, "runoffEc")).toEqual([value, said]);
  });

  it.each<[unknown, number | undefined, Found[1]]>([
    [6.1, 6.1, ""], ["6,1", 6.1, ""], ["pH 6.1", 6.1, ""], ["pH: 6,1", 6.1, ""], ["6.1 pH", 6.1, ""], ["6·1", 6.1, ""], ["↑6.1", 6.1, ""], ["6.1 ↓", 6.1, ""], ["EC 6.1", undefined, "left out"], ["6.1 → 5.9", undefined, "left out"], [2.8, 2.8, "doubt"], [10.5, 10.5, "doubt"], [0.04, undefined, "left out"],
    [61, undefined, "left out"], [21.5, undefined, "left out"], [-177, undefined, "left out"], ["168 mV", undefined, "left out"], [45_448, undefined, "left out"],
  ])("runoff pH near 6.0: %j is %j %s", (cell, value, said) => {
    expect(cellUnder("Runoff pH", cell, 6, "runoffPh")).toEqual([value, said]);
  });

  it.each<[unknown, number | undefined, Found[1]]>([
    [500, 0.5, ""], ["500 ml", 0.5, ""], ["1,500", 1.5, ""], ["1.5 L", 1.5, ""], ["1 500", 1.5, ""], ["0.5 gal", 1.892705892, ""], [0, 0, ""],
    [-5, undefined, "left out"], ["a cup", undefined, "left out"], ["500+250", undefined, "left out"],
  ])("water given in mL near 500: %j is %j L %s", (cell, value, said) => {
    const [found, how] = cellUnder("Water given (mL)", cell, 500, "inputLitres");
    expect(how).toBe(said);
    if (value === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(value, 9);
  });

  it.each<[unknown, number | undefined, Found[1]]>([
    [21.5, 21.5, ""], ["21,5 °C", 21.5, ""], ["70 F", 21.1111111, ""], [70, undefined, "left out"], [6.1, undefined, "left out"], [0, undefined, "left out"],
    [2.4, undefined, "left out"],
  ])("water temperature in C near 21: %j is %j %s", (cell, value, said) => {
    const [found, how] = cellUnder("Water temp °C", cell, 21, "solutionCelsius");
    expect(how).toBe(said);
    if (value === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(value, 6);
  });

  it.each<[unknown, number | undefined, Found[1]]>([
    [55, 55, ""], ["55 %", 55, ""], ["55%", 55, ""], [105, undefined, "left out"], [5, 5, "doubt"], [0, undefined, "left out"], [-3, undefined, "left out"],
  ])("humidity near 55: %j is %j %s", (cell, value, said) => {
    expect(cellUnder("RH", cell, 55, "humidityPercent")).toEqual([value, said]);
  });
});

describe("names of vessels", () => {
  const vesselsOf = (...names: unknown[]): readonly string[] =>
    readLog({ cells: [["Date", "Pot", "Runoff EC mS/cm"], ...names.map((name, day) => [45_383 + day, name, 2 + day / 10])] }).vessels;

  it.each<[readonly unknown[], readonly string[]]>([
    [["Pot 3", "pot3", "P-03", "Pot 3"], ["Pot 3"]],
    [[3, "Pot 3", "#3", "Pot 3"], ["Pot 3"]],
    [["Pot 3", "Pot 13", "Pot 30"], ["Pot 3", "Pot 13", "Pot 30"]],
    [["Pot 3a", "Pot 3b"], ["Pot 3a", "Pot 3b"]],
    [["Tomato 1", "Tom 1", "Tomato 1"], ["Tomato 1"]],
    [["Pot 1", "Plant 1", "P1"], ["Pot 1", "Plant 1", "P1"]],
    [["Basil", "basil ", "BASIL", "Basil"], ["Basil"]],
    [["Basil left", "Basil right"], ["Basil left", "Basil right"]],
  ])("%j are %j", (names, vessels) => {
    expect(vesselsOf(...names)).toEqual(vessels);
  });
});
