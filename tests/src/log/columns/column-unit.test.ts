import { describe, expect, it } from "vitest";
import { type LogAnswers, type LogReading, readLog } from "../../../../src/index";

/** A log of one column whose middle figure is the one given. */
function logOf(header: string, figure: number): LogReading {
  return readLog({ cells: [["Date", header], ...[figure, figure, figure].map((value, at) => [45_778 + at, value])] });
}

// What docs/log-sheets.md promises of a column's unit; common practice, no source.
describe("the unit of a column", () => {
  it.each([
    ["Runoff EC", 2.4, "mS/cm"], ["Runoff EC mS/cm", 20, "mS/cm"], ["Runoff EC dS/m", 2.4, "dS/m"],
    ["Runoff EC uS/cm", 2400, "uS/cm"], ["Runoff EC uS/cm", 100, "uS/cm"], ["Runoff EC mS/m", 240, "mS/m"],
    ["Runoff EC", 9.9, "mS/cm"], ["Runoff ppm (500)", 20, "ppm 500"], ["RH", 55, "%"], ["RH", 1, "share"], ["RH", 1.1, "%"],
    ["Runoff CF", 24, "CF"], ["Runoff ppm (500)", 1200, "ppm 500"],
    ["Water temp", 40, "C"], ["Water temp", 50, "F"], ["Water temp C", 22, "C"], ["Water temp F", 72, "F"],
  ])("%s with figures of %d is %s", (header, figure, unit) => {
    const { columns, questions } = logOf(header, figure);
    expect([columns[1]?.unit, columns[1]?.read, questions]).toEqual([unit, true, []]);
  });

  it.each([
    ["Runoff EC", 10, "EC unit"], ["Runoff EC", 20, "EC unit"], ["Runoff EC", 21, "EC unit"], ["Runoff EC", 16, "EC unit"], ["Runoff EC", 240, "EC unit"], ["Runoff EC", 2400, "EC unit"],
    ["Runoff EC mS/cm", 2400, "EC unit"],
    ["Runoff EC dS/m", 240, "EC unit"], ["Runoff EC uS/cm", 2.4, "EC unit"], ["Runoff ppm", 1200, "ppm scale"],
    ["Runoff ppm (500)", 1.2, "EC unit"], ["Water temp", 41, "temperature unit"],
    ["Water temp", 49, "temperature unit"],
    ["Water temp C", 72, "temperature unit"], ["Runoff volume", 210, "volume unit"],
  ])("%s with figures of %d is asked: %s", (header, figure, kind) => {
    const { columns, questions } = logOf(header, figure);
    expect(questions.map((question) => [question.kind, question.columns])).toEqual([[kind, [1]]]);
    expect(columns[1]?.read).toBe(false);
  });
});

describe("why a column is in its unit", () => {
  const whyOf = (header: string, ...cells: readonly unknown[]): string | undefined => {
    const { columns } = readLog({ cells: [["Date", header], ...cells.map((cell, at) => [45_778 + at, cell])] });
    return columns[1]?.why;
  };

  it("says nothing where the header says it, and what tells it where the header does not", () => {
    expect(whyOf("Runoff EC mS/cm", 2.4, 2.5)).toBe("the words over it");
    expect(whyOf("Runoff EC", "2.4 mS/cm", "2.5 mS/cm")).toBe("the words over it; its cells say mS/cm");
    expect(whyOf("Runoff EC", 2.36, 2.36)).toBe("the words over it; figures near 2.4 are mS/cm");
    expect(whyOf("Water temp", 71.6, 71.6)).toBe("the words over it; figures near 72 are F");
    expect(whyOf("RH", 0.55, 0.56, 0.54)).toBe("the words over it; figures near 0.55 are shares of 1");
  });

  it("names the figures that make it ask", () => {
    expect(whyOf("Runoff EC", 240, 240)).toContain("figures near 240 could be uS/cm or ppm");
    expect(whyOf("Runoff EC", 20, 20)).toContain("figures near 20 are brine in mS/cm, or tenths (CF)");
    expect(whyOf("Runoff EC", 21, 21)).toContain("figures near 21 could be uS/cm or ppm");
    expect(whyOf("Runoff EC", 16, 16)).toContain("figures near 16 are brine in mS/cm, or tenths (CF)");
    expect(whyOf("Runoff EC mS/cm", 240, 240)).toContain("says mS/cm, and its figures near 240 cannot be that");
    expect(whyOf("Runoff ppm (500)", 1.2, 1.2)).toContain("says ppm, and figures near 1.2 cannot be that");
    expect(whyOf("Water temp", 45, 45)).toContain("figures near 45 could be C or F");
  });

  it("says that the unit is only taken for one while no figure stands in it", () => {
    const whys = ["Runoff EC", "Water temp"].map((header) =>
      readLog({ cells: [["Date", header, "Runoff pH"], [45_778, "", 6]] }).columns[1]?.why.split("; ")[1]);
    expect(whys).toEqual(["taken for mS/cm until figures stand in it", "taken for C until figures stand in it"]);
  });

  it("is read in the header's unit, or mS/cm, while no figure stands in it yet", () => {
    const unitOf = (header: string): unknown =>
      readLog({ cells: [["Date", header, "Runoff pH"], [45_778, "", 6], [45_779, "", 6]] }).columns[1]?.unit;
    expect([unitOf("Runoff EC uS/cm"), unitOf("Runoff EC"), unitOf("Water temp"), unitOf("Water temp F")])
      .toEqual(["uS/cm", "mS/cm", "C", "F"]);
  });
});

describe("shares of 1", () => {
  const unitOf = (header: string, ...cells: readonly unknown[]): unknown =>
    readLog({ cells: [["Date", header], ...cells.map((cell, at) => [45_778 + at, cell])] }).columns[1]?.unit;

  it("are humidities up to 1, all of them, and none that says percent", () => {
    expect(unitOf("RH", 0.55, 0.6)).toBe("share");
    expect(unitOf("RH", 0.55, 60)).toBe("%");
    expect(unitOf("RH", "0.55 %", "0.6 %")).toBe("%");
    expect(unitOf("RH", "0.55 %", 0.6)).toBe("%");
  });
});

describe("the answer about a unit", () => {
  const readWith = (header: string, figure: number, answers: LogAnswers): readonly [unknown, unknown] => {
    const { columns, questions } = readLog({ cells: [["Date", header], [45_778, figure], [45_779, figure]] }, answers);
    return [columns[1]?.unit, [columns[1]?.why.split("; ").at(-1), questions.length]];
  };

  it.each<[string, number, LogAnswers, string]>([
    ["Runoff volume", 210, { volumeUnit: "mL" }, "mL"],
    ["Water temp", 45, { temperatureUnit: "F" }, "F"],
    ["Runoff ppm", 1200, { ppmScale: 700 }, "ppm 700"],
    ["Runoff ppm", 1.2, { ecUnit: "mS/cm" }, "mS/cm"],
    ["Runoff EC mS/cm", 2400, { ecUnit: "uS/cm" }, "uS/cm"],
    ["Runoff EC", 16, { ecUnit: "CF" }, "CF"],
  ])("%s of %d with %j is in %s, as answered", (header, figure, answers, unit) => {
    expect(readWith(header, figure, answers)).toEqual([unit, ["as answered", 0]]);
  });

  it("is not needed where header or cells say the unit of another measure, which counts for nothing", () => {
    const unitOf = (header: string, cell: unknown): unknown => {
      const cells = [["Date", header, "Runoff pH"], [45_778, cell, 6], [45_779, cell, 6]];
      return readLog({ cells }, { columns: { 1: { quantity: "runoff EC" } } }).columns[1]?.unit;
    };
    expect([unitOf("Reading °C", 2.4), unitOf("Reading", "2.4 C"), unitOf("Reading uS/cm", 2400)]).toEqual(["mS/cm", "mS/cm", "uS/cm"]);
  });

  it("does not change what the header says and the figures bear out", () => {
    expect(readWith("Runoff EC uS/cm", 2400, { ecUnit: "mS/cm" })[0]).toBe("uS/cm");
    expect(readWith("Runoff L", 0.4, { volumeUnit: "mL" })[0]).toBe("L");
    expect(readWith("Water temp C", 22, { temperatureUnit: "F" })[0]).toBe("C");
    expect(readWith("Runoff ppm (500)", 1200, { ppmScale: 700 })).toEqual(["ppm 500", ["the words over it", 0]]);
  });

  const cells = [["Date", "Runoff EC"], [45_778, 2400], [45_779, 2500], [45_780, 2600]];

  it.each([
    ["uS/cm", 2.4], ["ppm 500", 4.8], ["CF", 240],
  ] as const)("%s makes 2400 to %d mS/cm, or leaves it out", (ecUnit, value) => {
    const { rows, problems } = readLog({ cells }, { ecUnit });
    const said = problems.some(({ row, used }) => row === 1 && !used) || rows.length === 0;
    expect(said ? "left out" : rows[0]?.runoffEc).toEqual(value > 200 ? "left out" : value);
  });
});

describe("a temperature that cannot be the column's", () => {
  it.each([[72, "looks like F"], [150, "hard to believe"]])("of %d C among 22 %s", (figure, says) => {
    const readings = [22, 23, 22, figure].map((value, at) => [45_778 + at, value, 6]);
    const cells = [["Date", "Water temp C", "Runoff pH"], ...readings];
    const { problems } = readLog({ cells });
    expect(problems).toEqual([{ row: 4, column: 1, used: false, reason: expect.stringContaining(says) as string }]);
  });

  it("of 22 F among 72 looks like C", () => {
    const readings = [72, 73, 72, 22].map((value, at) => [45_778 + at, value, 6]);
    const cells = [["Date", "Water temp F", "Runoff pH"], ...readings];
    expect(readLog({ cells }).problems.map(({ reason }) => reason)).toEqual([expect.stringContaining("looks like C")]);
  });
});
