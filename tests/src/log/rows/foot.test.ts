import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

const body = [["2025-05-01", 1.6, 2.1], ["2025-05-02", 1.5, 2.4], ["2025-05-03", 1.4, 2.7]];

/** Which of the rows below the dated ones are taken for a total or an average, counted from 1. */
function footOf(rows: readonly (readonly unknown[])[], ...below: readonly (readonly unknown[])[]): number[] {
  const reading = readLog({ cells: [["Date", "EC in", "Runoff EC", "Notes"], ...rows, ...below] });
  return reading.setAside.filter(({ reason }) => reason.includes("a total or an average")).map(({ row }) => row - rows.length);
}

// 1.6, 1.5, 1.4 add up to 4.5, 1.5 each; 2.1, 2.4, 2.7 to 7.2, 2.4 each.
describe("a row without a date at the foot", () => {
  it.each([
    ["the sums", [4.5, 7.2]], ["the averages", [1.5, 2.4]], ["the least", [1.4, 2.1]], ["the greatest", [1.6, 2.7]],
    ["an average with its last decimal rounded", [1.5, 2.396]],
  ])("is no reading where it holds %s", (_, figures) => {
    expect(footOf(body, ["", ...figures])).toEqual([1]);
  });

  it.each(["pH in", "Runoff pH", "Feed L", "Runoff L", "Water temp", "Air temp", "RH"])("stays where its %s does not agree, and is none where it does", (header) => {
    const rows = [[1.6, 2.1, 6], [1.5, 2.4, 6.2], [1.4, 2.7, 6.4]].map((cells, at) => [`2025-05-0${at + 1}`, ...cells]);
    const asideOf = (figure: number): number[] =>
      readLog({ cells: [["Date", "EC in", "Runoff EC", header], ...rows, ["", 1.5, 2.4, figure]] }, { columns: {} })
        .setAside.map(({ row }) => row);
    expect([asideOf(6.2), asideOf(6.7)]).toEqual([[4], []]);
  });

  it("may have its last decimal rounded, at small figures too", () => {
    const litres = [[0.3, 1.6], [0.4, 1.5], [0.5, 1.4]].map((cells, at) => [`2025-05-0${at + 1}`, ...cells]);
    const asideOf = (figure: number): number =>
      readLog({ cells: [["Date", "Runoff L", "EC in"], ...litres, ["", figure, 1.5]] }).setAside.length;
    expect([asideOf(0.405), asideOf(0.41)]).toEqual([1, 0]);
  });

  it("stays where its date cannot be read, or a figure stands in it that no row above has", () => {
    expect(footOf(body, ["soon", 1.5, 2.4])).toEqual([]);
    const cells = [["Date", "EC in", "Runoff EC", "Runoff pH"], ...body, ["", 1.5, 2.4, 6]];
    expect(readLog({ cells }).setAside).toEqual([]);
  });

  it("may be one of several: sums, then averages", () => {
    expect(footOf(body, ["", 4.5, 7.2], ["", 1.5, 2.4])).toEqual([1, 2]);
  });

  it("stays where one figure alone agrees, or one of two does not", () => {
    expect(footOf(body, ["", "", 2.4])).toEqual([]);
    expect(footOf(body, ["", 1.5, 2.5])).toEqual([]);
    expect(footOf(body, ["", 1.5, 2.38])).toEqual([]);
  });

  it("is none with one figure that agrees below a blank row", () => {
    expect(footOf(body, ["", "", ""], ["", "", 2.4])).toEqual([2]);
    expect(footOf(body, ["", "", ""], ["", "", 2.5])).toEqual([]);
  });

  it("stays where it has a date or a note, or where two dated rows only stand above", () => {
    expect(footOf(body, ["2025-05-04", 1.5, 2.4])).toEqual([]);
    expect(footOf(body, ["", 1.5, 2.4, "dry"])).toEqual([]);
    expect(footOf(body.slice(0, 2), ["", 1.6, 2.4])).toEqual([]);
  });

  it("stays in the middle of a log: only the last rows can sum up", () => {
    expect(footOf(body, ["", 1.5, 2.4], ["2025-05-04", 1.6, 2.2])).toEqual([]);
  });

  it("takes what was said of its cells with it, and leaves what was said of other rows", () => {
    const { problems } = readLog({ cells: [["Date", "EC in", "Runoff EC"], ...body, ["soon", 1.6, 2.2], ["2025-05-05", 1.6, "~2.2"], ["", 6.1, 9.4]] });
    expect(problems.map(({ row }) => row)).toEqual([4, 5]);
  });
});
