import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

/** Why a row of figures is set aside; `undefined` where it is read. Columns: date, pot, EC, note. */
function asideOf(...row: readonly unknown[]): string | undefined {
  const cells = [["Date", "Pot", "Runoff EC", "Notes"], ["2025-05-01", "A", 2.4, ""], ["2025-05-02", "B", 2.5, ""], row];
  return readLog({ cells }).setAside.find(({ row: at }) => at === 3)?.reason;
}

describe("a row of figures that is no reading", () => {
  it.each(["Total", "Week 1 avg", "average", "Mean of May", "Summe", "Mittelwert", "promedio", "moyenne", "gemiddelde", "media", "target", "max", "Sollwert", "weekly mean"])(
    "says %s where its date would stand",
    (word) => {
      expect(asideOf(word, "A", 2.4)).toBe(`"${word}" sums up other rows, or sets limits`);
    },
  );

  it.each(["May mean", "total", "Average", "std dev", "n"])("calls its pot %s, with a date or without", (word) => {
    expect(asideOf("2025-05-03", word, 2.4)).toBe(`"${word}" sums up other rows`);
    expect(asideOf("", word, 2.4)).toBe(`"${word}" sums up other rows`);
  });

  it.each(["calibration", "buffer 4", "Standard", "Kalibrierung"])("calls its pot %s: a meter was checked", (word) => {
    expect(asideOf("2025-05-03", word, 2.4)).toBe(`"${word}" is no pot: a meter was checked`);
  });

  it.each(["weekly average", "mean of May", "Average", "daily mean", "total for the week"])("has %s for its note, and nothing else", (note) => {
    expect(asideOf("2025-05-03", "A", 2.4, note)).toBe(`"${note}" sums up other rows`);
  });

  it.each(["above the average", "mean day, hot", "total flush", "average looks"])("is read with the note %s", (note) => {
    expect(asideOf("2025-05-03", "A", 2.4, note)).toBeUndefined();
  });

  it("has a label in another column and no date", () => {
    const cells = [["Date", "By", "EC in", "Runoff EC"], ["2025-05-01", "Jo", 1.6, 2.4], ["", "Total", 1.6, 2.4], ["", "Jo", 1.6, 2.5]];
    expect(readLog({ cells }).setAside).toEqual([{ row: 2, reason: "\"Total\" sums up other rows" }]);
  });

  it("is one of a person: Max took the reading of a day with a date", () => {
    const cells = [["Date", "By", "Runoff EC"], ["2025-05-01", "Max", 2.4], [45_779, "Max", 2.5], ["3/5/2025", "Max", 2.6], ["13 May 2025", "Min", 2.4]];
    expect(readLog({ cells }).setAside).toEqual([]);
  });

  it("is one where a word only holds a word of sums: maxine, sumo, counter", () => {
    for (const name of ["Maxine", "Sumo", "Meander"]) expect(asideOf("2025-05-03", name, 2.4)).toBeUndefined();
  });
});
