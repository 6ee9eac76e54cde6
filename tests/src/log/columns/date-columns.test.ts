import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";
import { columnsOf } from "./columns-of";

const may = (day: number): string => `2025-05-${String(day).padStart(2, "0")}`;

/** What the first columns are where these stand under them, three rows or more, beside an EC. */
function readAs(headers: readonly string[], ...rows: readonly (readonly unknown[])[]): string[] {
  const beside = rows.map((row, at) => [...row, 2 + at / 10]);
  return columnsOf([...headers, "Runoff EC"], ...beside).slice(0, headers.length);
}

/** A column of days that change and one of days that change otherwise. */
const twoDays = [1, 2, 3].map((day) => [may(day), may(day + 10)]);

// Which date is the reading's, as its keeper would say. Common practice, no source.
describe("a column of the reading's day", () => {
  it("is known by its cells, whatever its words: a Time, a Wann, a column without a name", () => {
    expect(readAs(["Time"], [`${may(1)} 08:00`], [`${may(2)} 08:00`])).toEqual(["date"]);
    expect(readAs(["Wann"], [may(1)], [may(2)])).toEqual(["date"]);
    expect(columnsOf(["", "Runoff EC", "Runoff pH"], [may(1), 2.4, 6], [may(2), 2.5, 6])[0]).toBe("date");
  });

  it("is the one that is called a date, whatever else it is called, before one that is called a time", () => {
    expect(readAs(["Time", "Date Smith"], ...twoDays)[1]).toBe("date");
  });

  it("has dates in four cells of five at least where its words name none; in fewer it is asked about", () => {
    expect(readAs(["Wann"], [may(1)], [may(2)], [may(3)], [may(4)], ["soon"])).toEqual(["date"]);
    expect(readAs(["Wann"], [may(1)], [may(2)], [may(3)], ["later"], ["soon"])).toEqual(["asks date"]);
  });

  it("has them in half its cells where they do, beside another column of days", () => {
    expect(readAs(["Date", "Wann"], [may(1), may(11)], ["soon", may(12)])).toEqual(["date", "other"]);
    expect(readAs(["Date", "Wann"], [may(1), may(11)], ["soon", may(12)], ["later", may(13)])).toEqual(["other", "date"]);
  });

  it.each(["Sowing date", "Last flush", "Calibration date", "Harvest date", "Feed date", "Date of planting", "Fed on", "Target date"])(
    "is not the one of another day: %s beside a Date, first or last; alone it is asked about",
    (header) => {
      expect(readAs(["Date", header], ...twoDays)).toEqual(["date", "other"]);
      expect(readAs([header, "Date"], ...twoDays)).toEqual(["other", "date"]);
      expect(readAs([header], [may(1)], [may(2)])).toEqual(["asks date"]);
    },
  );

  it("says of itself that it was measured or read then, before a Date that may be the entry's", () => {
    expect(readAs(["Date", "Date measured"], ...twoDays)).toEqual(["other", "date"]);
    expect(readAs(["Sampled", "Date"], ...twoDays)).toEqual(["date", "other"]);
  });

  it("is the plainest of several, and asked about where two are as plain", () => {
    expect(readAs(["Date xyz", "Date"], ...twoDays)).toEqual(["other", "date"]);
    expect(readAs(["Wann", "Date xyz"], ...twoDays)).toEqual(["other", "date"]);
    expect(readAs(["Date xyz", "Date (yyyy-mm-dd)"], ...twoDays)).toEqual(["other", "date"]);
    expect(readAs(["Date xyz", "Date (dd/mm/yyyy)"], ...twoDays)).toEqual(["other", "date"]);
    expect(readAs(["Wann", "Quando"], ...twoDays)).toEqual(["asks date", "asks date"]);
    expect(readAs(["Date", "Datum"], ...twoDays)).toEqual(["asks date", "asks date"]);
  });

  it("leaves a Time beside it the clock, also where that says the day once more", () => {
    expect(readAs(["Date", "Time"], [may(1), `${may(1)} 08:00`], [may(2), `${may(2)} 09:00`])).toEqual(["date", "time"]);
    expect(readAs(["Wann", "Time"], [may(1), `${may(1)} 08:00`], [may(2), `${may(2)} 09:00`])).toEqual(["other", "date"]);
  });

  it("is not the one that never changes, unless none does", () => {
    expect(readAs(["Date", "Wann"], [may(1), may(11)], [may(1), may(12)])).toEqual(["other", "date"]);
    expect(readAs(["Date"], [may(1)], [may(1)])).toEqual(["date"]);
  });

  it("is none where it holds notes or readings that look like dates", () => {
    expect(readAs(["Date", "Notes"], [may(1), may(11)], [may(2), may(12)])).toEqual(["date", "notes"]);
    expect(readAs(["Notes"], [may(1)], [may(2)])).toEqual(["notes"]);
    expect(readAs(["Runoff pH"], ["2025-05-06"], ["2025-05-07"])).toEqual(["runoff pH"]);
  });
});

describe("a log without a column of dates", () => {
  it("asks about a Date that counts days, names weekdays or holds other words, and about a clock alone", () => {
    expect(readAs(["Day"], [1], [2], [3])).toEqual(["asks date"]);
    expect(readAs(["Day"], ["Mon"], ["Tue"], ["Wed"])).toEqual(["asks date"]);
    expect(readAs(["Date"], ["soon"], ["later"])).toEqual(["asks date"]);
    expect(readAs(["Time"], ["08:00"], ["09:00"])).toEqual(["asks date or time"]);
    expect(readAs(["Time"], [""], [""])).toEqual(["time"]);
    expect(readAs(["Day", "Date"], [1, "soon"], [2, "later"])).toEqual(["asks date", "other"]);
    expect(readAs(["Date", "Sample"], ["soon", "tray 2025-05-01 a"], ["later", "tray 2025-05-02 a"])).toEqual(["asks date", "other"]);
  });

  it("reads serial numbers under a Date without a format, from 1954 on, and a Date in which nothing stands yet", () => {
    expect(readAs(["Date"], [45_778], [45_779])).toEqual(["date"]);
    expect(readAs(["Date"], [20_000], [20_001])).toEqual(["date"]);
    expect(readAs(["Date"], [""], [""])).toEqual(["date"]);
  });

  it("keeps a Date of which one cell in many can be read, or lacks only its year", () => {
    expect(readAs(["Date"], [may(1)], ["soon"], ["later"], ["then"])).toEqual(["date"]);
    expect(readAs(["Date"], ["3 May"], ["4 May"])).toEqual(["date"]);
  });

  it("reads the second of two Dates where the first counts days, and passes over the first", () => {
    expect(readAs(["Day", "Date"], [1, may(1)], [2, may(2)])).toEqual(["other", "date"]);
    expect(readAs(["Day", "Date"], ["Mon", "3 May"], ["Tue", "4 May"])).toEqual(["other", "date"]);
    expect(readAs(["Day", "Date"], [1, may(1)], [2, "soon"], [3, "later"])).toEqual(["other", "date"]);
  });

  it("asks about a column of words with a day in most of them, and about no other", () => {
    expect(readAs(["Sample"], ["tray 2025-05-01 a"], ["tray 2025-05-02 a"])).toEqual(["asks date"]);
    expect(readAs(["Sample"], ["tray 2025-05-01 a"], ["tray two"])).toEqual(["other"]);
    expect(readAs(["Date", "Sample"], [may(1), "tray 2025-05-01 a"], [may(2), "tray 2025-05-02 a"])).toEqual(["date", "other"]);
  });
});

describe("a date that is answered", () => {
  const cells = [["Date", "Wann", "Runoff EC"], [may(1), may(11), 2.1], [may(2), may(12), 2.2]];

  it("is read, and the other column of days says why it is not", () => {
    const { columns, rows } = readLog({ cells }, { columns: { 1: { quantity: "date" } } });
    expect(columns.map(({ quantity }) => quantity)).toEqual(["other", "date", "runoff EC"]);
    expect(columns[0]?.why).toContain("column answered");
    expect(rows.map(({ day }) => day)).toEqual([45_788, 45_789]);
  });

  it("is what the answer says, also where it is none", () => {
    const { columns } = readLog({ cells }, { columns: { 0: { quantity: "other" } } });
    expect(columns.map(({ quantity }) => quantity)).toEqual(["other", "date", "runoff EC"]);
  });
});

it("says what a date rests on: its words, or its cells", () => {
  const whyOf = (header: string): string | undefined =>
    readLog({ cells: [[header, "Runoff EC"], [may(1), 2.1], [may(2), 2.2]] }).columns[0]?.why;
  expect([whyOf("Date"), whyOf("Wann")]).toEqual(["the words over it", "its cells are dates"]);
});
