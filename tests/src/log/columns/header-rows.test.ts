import { describe, expect, it } from "vitest";
import { type LogAnswers, readLog } from "../../../../src/index";

type Cells = readonly (readonly unknown[])[];
const days: Cells = [["2025-05-01", 1.6, 2.4, 6], ["2025-05-02", 1.6, 2.5, 6.1]];

/** Which rows are the header, and what the columns hold under it. */
function headerOf(cells: Cells, answers: LogAnswers = {}): unknown[] {
  const { headerRows, columns } = readLog({ cells }, answers);
  return [headerRows, ...columns.map(({ quantity, unit }) => `${quantity} ${unit ?? "?"}`.trim())];
}
const four = ["date", "input EC mS/cm", "runoff EC mS/cm", "runoff pH"];

// Which rows name the columns, as a person would see it at a glance. Common practice, no source.
describe("the header", () => {
  it("is the row that names readings, below titles and a list of dates", () => {
    expect(headerOf([["Log of May"], [], ["Date", "EC in", "Runoff EC", "Runoff pH"], ...days])).toEqual([[2], ...four]);
    expect(headerOf([["Farm", "Smith"], ["Date", "EC in", "Runoff EC", "Runoff pH"], ...days])).toEqual([[1], ...four]);
  });

  it("is the first of two that name as much", () => {
    const names = ["Date", "EC in", "Runoff EC", "Runoff pH"];
    expect(headerOf([names, ...days, names])).toEqual([[0], ...four]);
  });

  it("has units under it or over it", () => {
    const names = ["Date", "Feed EC", "Runoff EC", "Runoff pH"];
    const units = ["", "mS/cm", "uS/cm", ""];
    const readings = days.map(([date, feed, , ph]) => [date, feed, 2400, ph]);
    const read = ["date", "input EC mS/cm", "runoff EC uS/cm", "runoff pH"];
    expect(headerOf([names, units, ...readings])).toEqual([[0, 1], ...read]);
    expect(headerOf([units, names, ...readings])).toEqual([[0, 1], ...read]);
  });

  it("has groups over it, each over the columns up to the next", () => {
    const cells = [["", "Input", "", "Runoff", ""], ["Date", "EC", "pH", "EC", "pH"], ["2025-05-01", 1.6, 5.8, 2.4, 6]];
    expect(headerOf(cells)).toEqual([[0, 1], "date", "input EC mS/cm", "input pH", "runoff EC mS/cm", "runoff pH"]);
  });

  it("has a group over one column only where that is a side and the column a reading", () => {
    expect(headerOf([["", "", "Runoff"], ["Date", "Feed EC", "EC"], ["2025-05-01", 1.6, 2.4]]))
      .toEqual([[0, 1], "date", "input EC mS/cm", "runoff EC mS/cm"]);
    expect(headerOf([["Runoff log"], ["Date", "EC in", "Runoff EC"], ["2025-05-01", 1.6, 2.4]]))
      .toEqual([[1], "date", "input EC mS/cm", "runoff EC mS/cm"]);
  });

  it("has a group over it whatever stands over the dates, and no line of a form of which one word is known", () => {
    const read = ["date", "time", "runoff EC mS/cm", "runoff pH"];
    const names = ["Date", "Time", "EC", "pH"];
    expect(headerOf([["Day", "", "Runoff", ""], names, ["2025-05-01", "08:00", 2.4, 6]])).toEqual([[0, 1], ...read]);
    const form = ["Farm", "Smith", "Meter", "bought new"];
    expect(headerOf([form, ["Date", "EC in", "Runoff EC", "Runoff pH"], ...days])).toEqual([[1], ...four]);
  });

  it("may say how a date is written in place of its name", () => {
    expect(headerOf([["dd/mm/yyyy", "Runoff EC"], ["3/5/2025", 2.4], ["4/5/2025", 2.5]])).toEqual([[0], "date", "runoff EC mS/cm"]);
  });

  it("gives no group to a date, a note or a climate beside it", () => {
    const cells = [["", "Runoff", "", "", ""], ["Date", "EC", "pH", "Air temp", "Notes"], ["2025-05-01", 2.4, 6, 24, "fine"]];
    expect(headerOf(cells)).toEqual([[0, 1], "date", "runoff EC mS/cm", "runoff pH", "air temperature C", "notes"]);
  });

  it("has how each figure was made under it, which makes it no row of averages", () => {
    const cells = [["Date", "Feed EC", "Drain EC"], ["", "uS/cm", "uS/cm"], ["", "Avg", "Avg"], ["2025-05-01", 1600, 2400]];
    expect(headerOf(cells)).toEqual([[0, 1, 2], "date", "input EC uS/cm", "runoff EC uS/cm"]);
  });

  it("takes sides under the names", () => {
    const cells = [["Date", "EC", "EC", "pH", "pH"], ["", "in", "out", "in", "out"], ["2025-05-01", 1.6, 2.4, 5.8, 6]];
    expect(headerOf(cells)).toEqual([[0, 1], "date", "input EC mS/cm", "runoff EC mS/cm", "input pH", "runoff pH"]);
  });

  it("takes a ppm scale from another of its rows", () => {
    expect(headerOf([["Date", "Runoff TDS", "Runoff pH"], ["", "ppm", ""], ["", "500 scale", "pH"], ["2025-05-01", 900, 6]])[1])
      .toBe("date");
    expect(headerOf([["Date", "Runoff ppm", "Runoff pH"], ["", "(x 0.5)", "pH"], ["2025-05-01", 900, 6]]))
      .toEqual([[0, 1], "date", "runoff EC ppm 500", "runoff pH"]);
  });

  it("takes the order of its dates from the row of units", () => {
    const cells = [["Date", "Runoff EC"], ["dd/mm/yyyy", "mS/cm"], ["3/5/2025", 2.4], ["4/5/2025", 2.5]];
    expect(readLog({ cells }).rows.map(({ day }) => day)).toEqual([45_780, 45_781]);
    const american = [["Date", "Runoff EC"], ["mm/dd/yyyy", "mS/cm"], ["5/3/2025", 2.4], ["5/4/2025", 2.5]];
    expect(readLog({ cells: american }).rows.map(({ day }) => day)).toEqual([45_780, 45_781]);
  });

  it("of one column is a clear name over one figure", () => {
    expect(headerOf([["Runoff EC"], [2.4], [2.5]])).toEqual([[0], "runoff EC mS/cm"]);
    expect(headerOf([["My log"], ["Runoff EC"], [2.4]])).toEqual([[1], "runoff EC mS/cm"]);
    expect(headerOf([["Runoff EC of tray seven"], [2.4]])).toEqual([[], "other"]);
    expect(headerOf([["Runoff EC"], [2.4, 2.5]])).toEqual([[], "other", "other"]);
  });

  it("is not a row of readings, of sentences or of weeks", () => {
    expect(headerOf(days)).toEqual([[], "other", "other", "other", "other"]);
    const long = "We measure the EC of what goes in and the EC of the runoff every morning";
    expect(headerOf([[long], ["Date", "EC in", "Runoff EC", "Runoff pH"], ...days])).toEqual([[1], ...four]);
    const second = "Tip the saucer out, wait for an hour, then measure the runoff pH in a clean cup";
    expect(headerOf([[long, second], ["Date", "EC in", "Runoff EC", "Runoff pH"], ...days])).toEqual([[1], ...four]);
  });

  it("is no list of names each with its figure", () => {
    expect(headerOf([["Feed EC", 1.6, "Drain EC", 2.4], ["Feed EC", 1.7, "Drain EC", 2.5]])[0]).toEqual([]);
    expect(headerOf([["Feed EC", "1.6", "Drain EC", "2,4"], ["Feed EC", "1.7", "Drain EC", "2,5"]])[0]).toEqual([]);
  });

  it("stands within the first 50 rows", () => {
    const names = ["Date", "EC in", "Runoff EC", "Runoff pH"];
    const titles = (count: number): Cells => Array.from({ length: count }, (_, at) => [`line ${at}`]);
    expect(headerOf([...titles(49), names, ...days])).toEqual([[49], ...four]);
    expect(headerOf([...titles(50), names, ...days])).toEqual([[], "other", "other", "other", "other"]);
  });

  it("is the row that is answered, and none where that is answered or no such row is there", () => {
    const cells = [["Date", "EC in", "Runoff EC", "Runoff pH"], ["Date", "Feed EC", "Drain EC", "Drain pH"], ...days];
    expect(headerOf(cells, { headerRow: 1 })).toEqual([expect.arrayContaining([1]), ...four]);
    expect(headerOf(cells, { headerRow: -1 })).toEqual([[], "other", "other", "other", "other"]);
    expect(headerOf(cells, { headerRow: 9 })).toEqual([[], "other", "other", "other", "other"]);
  });

  it("is the row that is answered, however far down it stands", () => {
    const lines: Cells = Array.from({ length: 60 }, (_, at) => [`line ${at}`]);
    const cells = [...lines, ["Date", "EC in", "Runoff EC", "Runoff pH"], ...days];
    expect(headerOf(cells, { headerRow: 60 })).toEqual([[60], ...four]);
  });
});
