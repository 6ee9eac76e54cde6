import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

/** What columns beside a date and an EC are, over so many days with a row for each line of cells. */
function readAs(headers: readonly string[], lines: readonly (readonly unknown[])[], days = 3): string[] {
  const rows = Array.from({ length: days }, (_, day) =>
    lines.map((cells, at) => [`2025-05-0${day + 1}`, ...cells.map((cell) => (typeof cell === "function" ? (cell as (d: number) => unknown)(day) : cell)), 2 + at / 10]));
  const { columns, questions } = readLog({ cells: [["Date", ...headers, "Runoff EC"], ...rows.flat()] });
  return columns.slice(1, -1).map(({ column, quantity }) =>
    questions.some(({ columns: waiting }) => waiting.includes(column)) ? "asked" : quantity);
}

// Which column tells the pots apart, as its keeper would say. Common practice, no source.
describe("a column that tells pots apart", () => {
  it("is one named as a pot", () => {
    expect(readAs(["Pot"], [["A"], ["B"]])).toEqual(["vessel"]);
    expect(readAs(["Plant no"], [[1], [2]])).toEqual(["vessel"]);
  });

  it.each(["Strain", "Crop", "Site", "Tent", "Bay", "Row", "Sorte"])("is a column of %s where rows of one day repeat", (header) => {
    expect(readAs([header], [["A"], ["B"]])).toEqual(["vessel"]);
    expect(readAs([header], [["A"]])).toEqual(["other"]);
  });

  it("is asked about where its words say nothing", () => {
    expect(readAs(["Xyz"], [["A"], ["B"]])).toEqual(["asked"]);
    expect(readAs(["Xyz"], [[1], [2]])).toEqual(["asked"]);
    expect(readAs(["Xyz"], [[999], [1]])).toEqual(["asked"]);
  });

  it("is no column of readings, of people, of parts of the day, of fractions or of great numbers", () => {
    expect(readAs(["By"], [["Jo"], ["Al"]])).toEqual(["other"]);
    expect(readAs(["Xyz"], [["am"], ["pm"]])).toEqual(["other"]);
    expect(readAs(["Xyz"], [["morning"], ["Abend"]])).toEqual(["other"]);
    expect(readAs(["Xyz"], [["am"], ["B"]])).toEqual(["other"]);
    expect(readAs(["Xyz"], [[1.5], [2]])).toEqual(["other"]);
    expect(readAs(["Xyz"], [[1000], [1]])).toEqual(["other"]);
    expect(readAs(["Target"], [[1], [2]])).toEqual(["other"]);
    expect(readAs(["Xyz kg"], [[1], [2]])).toEqual(["other"]);
  });

  it("comes back on other days, and is not as many names as rows", () => {
    expect(readAs(["Xyz"], [[(day: number) => `a${day}`], [(day: number) => `b${day}`]])).toEqual(["other"]);
    expect(readAs(["Strain"], [["A"], ["B"], ["C"]], 1)).toEqual(["vessel"]);
  });

  it("tells at least four rows of five of a day apart", () => {
    expect(readAs(["Strain"], [["A"], ["B"], ["C"], ["D"], ["D"]])).toEqual(["vessel"]);
    expect(readAs(["Strain"], [["A"], ["B"], ["C"], ["C"]])).toEqual(["other"]);
    expect(readAs(["Strain"], [["A"], ["A"]])).toEqual(["other"]);
  });

  it("is a place before any other word; two together where none does alone", () => {
    expect(readAs(["Xyz", "Tent"], [["A", "N"], ["B", "S"]])).toEqual(["other", "vessel"]);
    expect(readAs(["Tent", "Row"], [["N", "1"], ["N", "2"], ["S", "1"], ["S", "2"]])).toEqual(["vessel", "vessel"]);
    expect(readAs(["Xyz", "Uvw"], [["A", "N"], ["B", "S"]])).toEqual(["asked", "asked"]);
  });

  it("adds to a pot column that does not tell them apart by itself", () => {
    expect(readAs(["Pot", "Tent"], [["1", "N"], ["2", "N"], ["1", "S"], ["2", "S"]])).toEqual(["vessel", "vessel"]);
    expect(readAs(["Pot", "Tent"], [["1", "N"], ["2", "N"], ["3", "S"], ["4", "S"]])).toEqual(["vessel", "other"]);
  });

  it("is a medium only with another: coir and peat are no pots", () => {
    expect(readAs(["Medium"], [["coir"], ["peat"]])).toEqual(["other"]);
    expect(readAs(["Medium", "Tent"], [["coir", "N"], ["peat", "N"], ["coir", "S"], ["peat", "S"]])).toEqual(["vessel", "vessel"]);
  });

  it("is not needed where the clock tells the rows of a day apart, or a quarter of the days only repeat", () => {
    expect(readAs(["Time", "Strain"], [["08:00", "A"], ["16:00", "B"]])).toEqual(["time", "other"]);
    const cells = [1, 2, 3, 4, 4].map((day) => [`2025-05-0${day}`, day === 4 ? "A" : "B", 2 + day / 10]);
    expect(readLog({ cells: [["Date", "Strain", "Runoff EC"], ...cells] }).columns[1]?.quantity).toBe("other");
  });

  it("is found below a date typed once over its rows", () => {
    const cells = [["2025-05-01", "A", 2.1], ["", "B", 2.2], ["2025-05-02", "A", 2.3], ["", "B", 2.4]];
    const { rows } = readLog({ cells: [["Date", "Strain", "Runoff EC"], ...cells] });
    expect(rows.map(({ vessel }) => vessel)).toEqual(["A", "B", "A", "B"]);
  });
});

describe("a count of plants", () => {
  it.each(["Plants", "No. of pots", "Number of plants", "Total pots"])("%s over figures is no pot", (header) => {
    expect(readAs([header], [[12]])).toEqual(["other"]);
  });

  it("is a pot's name where it is in words, or tells the rows of a day apart", () => {
    expect(readAs(["Pot plants"], [["Basil"]])).toEqual(["vessel"]);
    expect(readAs(["Pot plants"], [[1], [2]])).toEqual(["vessel"]);
    expect(readAs(["Pot plants"], [[12]])).toEqual(["other"]);
  });

  it("says why it is not read, and so does a column that tells the pots", () => {
    const cells = [["Date", "Number of plant", "Strain", "Runoff EC"], ["2025-05-01", 12, "A", 2.1], ["2025-05-01", 12, "B", 2.2], ["2025-05-02", 12, "A", 2.3], ["2025-05-02", 12, "B", 2.4]];
    expect(readLog({ cells }).columns.slice(1, 3).map(({ why }) => why))
      .toEqual(["it counts plants or pots", "it tells the rows of one day apart"]);
  });
});
