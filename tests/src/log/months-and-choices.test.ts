import { describe, expect, it } from "vitest";
import { readLog } from "../../../src/index";

/** The days of a log of one reading a row, as ISO, by the platform's calendar. */
function daysOf(dates: readonly string[]): (string | undefined)[] {
  const cells = [["Date", "Runoff EC mS/cm"], ...dates.map((date, at) => [date, 2 + at / 10])];
  return readLog({ cells }).rows.map(({ day }) =>
    day === undefined ? undefined : new Date((day - 25_569) * 86_400_000).toISOString().slice(0, 10));
}

const year = Array.from({ length: 12 }, (_, month) => `2024-${String(month + 1).padStart(2, "0")}-17`);

// The months of five languages, as their dictionaries have them; from memory.
describe("the months in words", () => {
  it.each([
    ["English, short", "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec"],
    ["English", "January February March April May June July August September October November December"],
    ["German", "Januar Februar März April Mai Juni Juli August September Oktober November Dezember"],
    ["Dutch", "januari februari maart april mei juni juli augustus september oktober november december"],
    ["French", "janvier février mars avril mai juin juillet août septembre octobre novembre décembre"],
    ["Spanish", "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre"],
  ])("are read in %s: 17 of each of the 12 in 2024", (_, months) => {
    expect(daysOf(months.split(" ").map((month) => `17 ${month} 2024`))).toEqual(year);
  });
});

describe("what can be chosen", () => {
  const choicesOf = (kind: string, header: string, ...figures: readonly number[]): readonly string[] | undefined => {
    const cells = [["Date", header], ...figures.map((figure, at) => [45_778 + at, figure])];
    return readLog({ cells }).questions.find((question) => question.kind === kind)?.choices;
  };

  it.each([
    ["EC unit", "Runoff EC", [240, 250, 260], ["mS/cm", "uS/cm", "ppm 500", "ppm 640", "ppm 700", "CF"]],
    ["ppm scale", "Runoff ppm", [900, 950, 990], ["500", "640", "700"]],
    ["volume unit", "Runoff volume", [210, 220, 230], ["L", "mL", "gal", "qt", "fl oz"]],
    ["temperature unit", "Tank temp", [45, 46, 44], ["C", "F"]],
  ])("for the %s of %s %j are at least %j", (kind, header, figures, wanted) => {
    expect(choicesOf(kind, header, ...figures)).toEqual(expect.arrayContaining(wanted));
  });

  it("for 3/4/2025 and 4/4/2025 are day first and month first", () => {
    const { questions } = readLog({ cells: [["Date", "Runoff EC"], ["3/4/2025", 2.4], ["4/4/2025", 2.5]] });
    expect(questions.map(({ choices }) => choices)).toEqual([["day first", "month first"]]);
  });
});

describe("words that say why", () => {
  it("a header of two names that comes again is called a header", () => {
    const cells = [["Date", "Runoff EC"], [45_778, 2.4], ["Date", "Runoff EC"], [45_779, 2.5]];
    const reason = expect.stringContaining("repeats the header") as string;
    expect(readLog({ cells }).setAside).toEqual([{ row: 2, reason }]);
  });

  it("a negative EC is said to be below 0", () => {
    const cells = [["Date", "Runoff EC", "Runoff pH"], ...[2.4, 2.5, -1.4, 2.5].map((ec, at) => [45_778 + at, ec, 6])];
    expect(readLog({ cells }).problems.map(({ row, used, reason }) => [row, used, reason]))
      .toEqual([[3, false, expect.stringContaining("below 0")]]);
  });

  it("a Day column of 1, 2, 3 counts days, and one of names names days of the week", () => {
    const whyOf = (...days: readonly (string | number)[]): string | undefined =>
      readLog({ cells: [["Day", "Runoff EC"], ...days.map((day, at) => [day, 2 + at / 10])] }).columns[0]?.why;
    expect(whyOf(1, 2, 3)).toContain("counts days");
    expect(whyOf("Mon", "Tue", "Wed")).toContain("days of the week");
    expect(whyOf("soon", "later", "then")).toContain("no dates");
  });
});
