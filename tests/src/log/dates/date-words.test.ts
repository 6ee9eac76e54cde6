import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

const dayOf = (date: string): number | undefined =>
  readLog({ cells: [["Date", "Runoff EC mS/cm"], [date, 2.1], ["2024-05-13", 2.2]] }).rows[0]?.day;

/** Serial numbers of days, by the platform's clock. */
const serial = (month: number, day: number): number => Date.UTC(2024, month - 1, day) / 86_400_000 + 25_569;

/** The seven days as a language writes them, by the Unicode locale data of the platform. */
const weekdaysOf = (language: string, weekday: "long" | "short"): string[] => {
  const names = new Intl.DateTimeFormat(language, { weekday, timeZone: "UTC" });
  return Array.from({ length: 7 }, (_, day) => names.format(Date.UTC(2024, 0, 1 + day)));
};

describe.each(["long", "short"] as const)("weekdays, %s", (style) => {
  it.each(["en", "de", "nl", "fr", "es", "it", "pt", "pl"])("%s: each is read past before a date, and is none", (language) => {
    for (const weekday of weekdaysOf(language, style)) {
      expect([weekday, dayOf(`${weekday} 17/5/2024`)]).toEqual([weekday, serial(5, 17)]);
      expect([weekday, dayOf(`${weekday}, 17 May 2024`)]).toEqual([weekday, serial(5, 17)]);
      // Alone, "mar" may be a Tuesday or March.
      if (/^mar\.?$/.test(weekday)) continue;
      const { columns } = readLog({ cells: [["Day", "Runoff EC"], [weekday, 2.1], [weekday, 2.2]] });
      expect([weekday, columns[0]?.why]).toEqual([weekday, expect.stringContaining("days of the week")]);
    }
  });
});

describe.each(["long", "short"] as const)("months, %s", (month) => {
  it.each(["en-GB", "de", "nl", "fr", "es"])("%s: the 17th of each", (language) => {
    const names = new Intl.DateTimeFormat(language, { day: "numeric", month, year: "numeric", timeZone: "UTC" });
    for (let at = 1; at <= 12; at += 1) {
      const date = names.format(Date.UTC(2024, at - 1, 17));
      expect([date, dayOf(date)]).toEqual([date, serial(at, 17)]);
    }
  });
});

describe("dates in words", () => {
  // Spellings that the locale data does not use: ASCII German, and Spanish beside "septiembre".
  it.each([
    ["3 Maerz 2024", 3, 3], ["3 setiembre 2024", 9, 3], ["Mar 3 2024", 3, 3], ["May 3, 2024", 5, 3], ["March 3rd 2024", 3, 3],
    ["3rd of", undefined, 0], ["1st May 2024", 5, 1], ["22nd May 2024", 5, 22], ["3-May-24", 5, 3], ["3 de mayo de 2024", 5, 3],
  ])("%s", (date, month, day) => {
    expect(dayOf(date)).toBe(month === undefined ? undefined : serial(month, day));
  });

  it.each([
    ["morning", "evening"], ["morgens", "mittags"], ["Vormittag", "Nachmittag"], ["mañana", "noche"], ["matin", "soir"], ["ochtend", "middag"],
    ["mattina", "sera"], ["manhã", "tarde"], ["rano", "wieczór"], ["noon", "afternoon"], ["afternoon", "night"], ["am", "pm"],
  ])("a blank date of the %s row and the %s row below it is one day, and not the other way round", (early, late) => {
    const daysOf = (first: string, second: string): (number | undefined)[] =>
      readLog({ cells: [["Date", "When", "Runoff EC mS/cm"], ["2024-05-17", first, 2.1], ["", second, 2.2]] })
        .rows.map(({ day }) => day);
    expect(daysOf(early, late)).toEqual([serial(5, 17), serial(5, 17)]);
    expect(daysOf(late, early)).toEqual([serial(5, 17), undefined]);
    expect(daysOf(early, early)).toEqual([serial(5, 17), undefined]);
  });
});
