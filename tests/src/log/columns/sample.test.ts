import { describe, expect, it } from "vitest";
import { formatUnit, isDateFormat } from "../../../../src/log/columns/number-format";
import { sampleColumn } from "../../../../src/log/columns/sample";
import { readLog } from "../../../../src/index";

/** The unit of one column and its readings in mS/cm, L or C. */
function readingsOf(header: string, field: "runoffEc" | "runoffLitres" | "airCelsius", ...cells: readonly unknown[]): unknown {
  const rows = cells.map((cell, at) => [45_778 + at, cell, 6]);
  const reading = readLog({ cells: [["Date", header, "Runoff pH"], ...rows] });
  return [reading.columns[1]?.unit, ...reading.rows.map((row) => row[field])];
}

// One gallon is 3.785411784 L, one CF 0.1 mS/cm; 68 F are 20 C.
describe("units typed into the cells of a column", () => {
  it("are the column's where more than half its figures have the same", () => {
    expect(readingsOf("Runoff EC", "runoffEc", "2400 uS/cm", "2500 uS/cm", 2600)).toEqual(["uS/cm", 2.4, 2.5, 2.6]);
    expect(readingsOf("Runoff volume", "runoffLitres", "400 mL", "500 mL", "0.4 L")).toEqual(["mL", 0.4, 0.5, 0.4]);
  });

  it("are each their cell's where no unit has most and no cell lacks one", () => {
    expect(readingsOf("Runoff EC", "runoffEc", "2.4 mS/cm", "2500 uS/cm", "26 CF")).toEqual(["mS/cm", 2.4, 2.5, 2.6]);
    expect(readingsOf("Runoff volume", "runoffLitres", "0.4 L", "500 mL", "0.5 gal")).toEqual(["L", 0.4, 0.5, 1.892705892]);
    expect(readingsOf("Air temp", "airCelsius", "20 C", "68 F")).toEqual(["C", 20, 20]);
  });

  it("run in hundreds where a comma divides thousands: uS/cm, ppm and mL", () => {
    expect(readingsOf("Runoff EC uS/cm", "runoffEc", "2,400", "2,500")).toEqual(["uS/cm", 2.4, 2.5]);
    expect(readingsOf("Runoff ppm (500)", "runoffEc", "1,200", "1,250")).toEqual(["ppm 500", 2.4, 2.5]);
    expect(readingsOf("Runoff mL", "runoffLitres", "1,500", "1,250")).toEqual(["mL", 1.5, 1.25]);
    expect(readingsOf("Runoff EC mS/cm", "runoffEc", "2,400", "2,500")).toEqual(["mS/cm", 2.4, 2.5]);
  });

  it("are asked about where a cell lacks one and none has most", () => {
    expect(readingsOf("Runoff volume", "runoffLitres", "400 mL", 500)).toEqual([undefined, undefined, undefined]);
  });
});

describe("number formats", () => {
  it.each(["d/m/yyyy", "yyyy-mm-dd", "dd", "dddd", "[$-409]d-mmm-yy", "m/d/yy h:mm", "dd\\.mm\\.yyyy", "YYYY", "d\"th of\" mmm"])(
    "%s shows dates", (format) => { expect(isDateFormat(format)).toBe(true); });

  it.each(["General", "0.0", "0.00\" d\"", "[Red]0.0", "h:mm", "0%", "#,##0", "0.0 \\d", "", undefined])(
    "%s shows none", (format) => { expect(isDateFormat(format)).toBe(false); });

  it.each([
    ["0.0 \"mS/cm\"", "mS/cm"], ["0\" mL\"", "mL"], ["0.0\\L", "L"], ["0%", "%"], ["0.0\"°C\"", "C"], ["0.0", undefined], ["General", undefined], ["", undefined],
    [undefined, undefined], ["d/m/yyyy", undefined],
  ])("%j writes %s behind the figure", (format, unit) => {
    expect(formatUnit(format)).toBe(unit);
  });

  it("of a column that show its unit, or its dates, are believed", () => {
    const cells = [["When", "Runoff EC", "Runoff pH"], [45_778, 240, 6], [45_779, 250, 6], [45_780, 250, 6]];
    const row = ["d/m/yyyy", "0 \"mS/m\"", "0.0"];
    const { columns, rows } = readLog({ cells, numberFormats: [["", "", ""], row, row, row] });
    expect(columns.map(({ quantity, unit }) => [quantity, unit])).toEqual([["date", ""], ["runoff EC", "mS/m"], ["runoff pH", ""]]);
    expect(rows.map(({ day, runoffEc }) => [day, runoffEc])).toEqual([[45_778, 2.4], [45_779, 2.5], [45_780, 2.5]]);
  });

  it("of dates over figures of a meter: the sheet has turned the reading into a date", () => {
    const cells = [["Date", "Runoff pH", "Runoff EC"], [45_778, 45_783, 2.4], [45_779, 6, 2.4]];
    const { problems } = readLog({ cells, numberFormats: [["", "", ""], ["d/m/yyyy", "d-mmm", "0.0"], ["d/m/yyyy", "0.0", "0.0"]] });
    expect(problems.map(({ row, column, used, reason }) => [row, column, used, reason.includes("turned this reading into a date")]))
      .toEqual([[1, 1, false, true]]);
  });
});

describe("the middle of a column", () => {
  const likeOf = (...figures: readonly unknown[]): string | undefined => {
    const rows = figures.map((figure, at) => [45_778 + at, figure, 6]);
    return readLog({ cells: [["Date", "Runoff EC", "Runoff pH"], ...rows] }).columns[1]?.why.split("; ")[1];
  };

  it("is that of its figures above 0: the middle one, or half way between two", () => {
    expect(likeOf(1, 9, 2)).toBe("figures near 2 are mS/cm");
    expect(likeOf(1, 2, 3, 9)).toBe("figures near 2.5 are mS/cm");
    expect(likeOf(0, 0, 0, 2, -1)).toBe("figures near 2 are mS/cm");
    expect(likeOf(3)).toBe("figures near 3 are mS/cm");
  });

  it("is that of the figures without a unit of their own, where some have one", () => {
    expect(likeOf(2, 3, "2400 uS/cm", 4)).toBe("figures near 3 are mS/cm");
  });

  it("is that of all in the column's unit, where each has its own and no unit has most", () => {
    expect(sampleColumn({ cells: [["2.4 mS/cm"], ["2600 uS/cm"]] }, 0, 0).median).toBeCloseTo(2.5, 12);
    expect(sampleColumn({ cells: [["68 F"], ["22 C"]] }, 0, 0).median).toBeCloseTo(21, 12);
  });

  it("is learned from rows all over a long log", () => {
    expect(likeOf(...Array.from({ length: 2000 }, (_, at) => (at < 900 ? 1 : 3)))).toBe("figures near 3 are mS/cm");
  });
});
