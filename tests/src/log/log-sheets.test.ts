import { describe, expect, it } from "vitest";
import { logSheetsIn, readLog, shareDays } from "../../../src/index";

// What a person would call a log among the tabs of a book: common practice, no source.
const log = (day: number, ...ecs: readonly number[]) =>
  ({ cells: [["Date", "EC in", "EC runoff"], ...ecs.map((ec, at) => [day + at, 1.6, ec])] });
const readMe = {
  cells: [
    ["How we keep this log"],
    ["Measure EC in and EC runoff every morning, pH too."],
    ["Runoff: the first 100 mL."],
  ],
};
const recipe = { cells: [["Salt", "g per 100 L", "EC share"], ["Calcium nitrate", 60, 0.7], ["Epsom salt", 25, 0.2]] };
const waiting = { cells: [["Date", "EC", "pH"], [45_778, 1.6, 5.8], [45_779, 1.7, 5.9]] };
const names = (sheets: Parameters<typeof logSheetsIn>[0]): string[] =>
  logSheetsIn(sheets).map(({ sheet }) => sheet.name);

describe("logSheetsIn", () => {
  it("passes over a Read me and a recipe, and keeps 2 logs in the book's order", () => {
    const sheets = [
      { name: "Read me", grid: readMe },
      { name: "Tomato 1", grid: log(45_778, 2.4, 2.5) },
      { name: "Recipe", grid: recipe },
      { name: "Pepper 1", grid: log(45_778, 2, 2.1) },
    ];
    expect(names(sheets)).toEqual(["Tomato 1", "Pepper 1"]);
  });

  it("offers a log that waits for an answer, and no empty sheet", () => {
    expect(names([{ name: "Empty", grid: { cells: [] } }, { name: "Log", grid: waiting }])).toEqual(["Log"]);
  });

  it("passes over a log of the climate, which holds neither EC nor pH, and one that nobody has filled in yet", () => {
    const climate = { cells: [["Date", "Air temp C", "RH %"], [45_778, 24, 55], [45_779, 25, 60]] };
    const ready = { cells: [["Date", "EC in", "Runoff EC", "Runoff pH"]] };
    expect(names([{ name: "Climate", grid: climate }, { name: "June", grid: ready }])).toEqual([]);
  });
});

describe("sheets that are made here", () => {
  const made = {
    cells: [
      ["Watch: Pepper 2"],
      ["Boxes are yours; the shaded cells follow. Every EC in mS/cm at 25 C."],
      [],
      ...log(45_778, 2.4, 2.5).cells,
    ],
  };
  const portions = {
    cells: [
      ["Portion", "Litres", "Runoff EC", "Runoff pH"],
      ["before", "", 4.1, 5.8],
      [1, 2, 3.6, 5.9],
    ],
  };

  it("are no logs of the book, and neither are the portions of one flush", () => {
    const sheets = [
      { name: "Log", grid: log(45_778, 2.4, 2.5) },
      { name: "Watch", grid: made },
      { name: "Flush day", grid: portions },
    ];
    expect(names(sheets)).toEqual(["Log"]);
  });

  it("say so under their title: a log into whose rows those words are copied stays one", () => {
    const words = "Boxes are yours; the shaded cells follow.";
    const copied = { cells: [...log(45_778, 2.4, 2.5).cells, [words], [45_780, 1.6, 2.6]] };
    const spaced = { cells: [["Watch"], [], [words], [], ...log(45_778, 2.4, 2.5).cells] };
    expect(names([{ name: "Log", grid: copied }, { name: "Watch", grid: spaced }])).toEqual(["Log"]);
  });

  it("a log that counts portions under its dates stays one", () => {
    const dated = { cells: [["Date", "Portion", "Runoff EC"], [45_778, 1, 3.6], [45_779, 1, 3.1]] };
    expect(names([{ name: "Log", grid: dated }])).toEqual(["Log"]);
  });
});

describe("shareDays", () => {
  it("tells two pots of the same 2 days from two weeks that follow each other", () => {
    const [one, same, later] = [log(45_778, 2.4, 2.5), log(45_778, 2, 2.1), log(45_785, 2, 2.1)].map((grid) =>
      readLog(grid),
    );
    if (one === undefined || same === undefined || later === undefined) throw new Error("three logs were read");
    expect([shareDays([one, same]), shareDays([one, later])]).toEqual([true, false]);
  });
});

describe("what a sheet hides", () => {
  it("2 hidden rows and a hidden column that is read are named", () => {
    const { remarks } = readLog({ ...log(45_778, 2.4, 2.5), hiddenRows: 2, hiddenColumns: [2] });
    expect(remarks).toEqual(["2 hidden rows are not read.", "Hidden columns are read too: C (runoff EC)."]);
  });
});
