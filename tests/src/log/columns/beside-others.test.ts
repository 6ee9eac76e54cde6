import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";
import { columnsOf } from "./columns-of";

const pHs = [6.1, 5.8, 6.3];

// What a person would say of a column by what stands beside it. Common practice, no source.
describe("a bare column beside others of its measure", () => {
  it("is the input's where the other is the runoff's, and the runoff's where the other is the input's", () => {
    expect(columnsOf(["Date", "pH", "Runoff pH"], [45_778, 5.8, 6.1])).toEqual(["date", "input pH", "runoff pH"]);
    expect(columnsOf(["Date", "pH", "pH in"], [45_778, 6.1, 5.8])).toEqual(["date", "runoff pH", "input pH"]);
  });

  it("is asked about where both sides are there already, and leaves them as they are", () => {
    expect(columnsOf(["Date", "pH", "pH in", "Runoff pH"], [45_778, ...pHs]))
      .toEqual(["date", "asks input pH or runoff pH", "input pH", "runoff pH"]);
  });

  it("is asked about where the other is bare too, and where its own words say more than a measure", () => {
    expect(columnsOf(["Date", "pH", "pH"], [45_778, 5.8, 6.1]).slice(1))
      .toEqual(["asks input pH or runoff pH", "asks input pH or runoff pH"]);
    expect(columnsOf(["Date", "pH 2", "Runoff pH"], [45_778, 5.8, 6.1])[1]).toBe("asks input pH or runoff pH");
    expect(columnsOf(["Date", "Tray pH", "Runoff pH"], [45_778, 5.8, 6.1])[1]).toBe("asks input pH or runoff pH");
    expect(columnsOf(["Date", "Runoff mL/m2", "Feed L"], [45_778, 300, 2])[1]).toBe("asks input volume or runoff volume");
    expect(columnsOf(["Date", "mL per plant", "Feed L"], [45_778, 300, 2])[1]).toBe("asks input volume or runoff volume");
  });
});

describe("a temperature beside the humidity", () => {
  it("is the air's, on either side of it; further off it is asked", () => {
    expect(columnsOf(["Date", "Temp", "RH"], [45_778, 24, 55])).toEqual(["date", "air temperature", "humidity"]);
    expect(columnsOf(["Date", "RH", "Temp"], [45_778, 55, 24])).toEqual(["date", "humidity", "air temperature"]);
    const apart = columnsOf(["Date", "Temp", "Runoff pH", "RH", "Runoff EC", "Temp"], [45_778, 24, 6, 55, 2.4, 21]);
    expect([apart[1], apart[5]]).toEqual(Array(2).fill("asks solution temperature or air temperature"));
  });

  it("stays the solution's where its words say so", () => {
    expect(columnsOf(["Date", "Water temp", "RH"], [45_778, 21, 55])[1]).toBe("solution temperature");
  });
});

describe("how the plant looks", () => {
  const posture = (...cells: readonly unknown[]): string | undefined =>
    columnsOf(["Date", "Runoff EC", "Posture"], ...cells.map((cell, at) => [45_778 + at, 2.4, cell]))[2];

  it("is a note where it is told in words, one is enough, and where as many cells are words as figures", () => {
    expect(posture("limp")).toBe("notes");
    expect(posture("limp", "hanging", 2)).toBe("notes");
    expect(posture(1, "limp")).toBe("notes");
  });

  it("is a scale where most cells are figures, and where nothing stands in it yet", () => {
    expect(posture(1, 0, "limp")).toBe("posture");
    expect(posture("", "")).toBe("posture");
  });
});

describe("water beside the feed", () => {
  it("is the water before any feed is in it; alone it is what was poured", () => {
    expect(columnsOf(["Date", "Water EC", "Tank EC"], [45_778, 0.4, 1.6])).toEqual(["date", "other", "input EC"]);
    expect(columnsOf(["Date", "Water EC", "Runoff EC"], [45_778, 1.6, 2.4])[1]).toBe("input EC");
    expect(columnsOf(["Date", "Water EC", "Water pH"], [45_778, 1.6, 6]).slice(1)).toEqual(["input EC", "input pH"]);
  });

  it("stays what it is answered to be, and is asked about where no word says what was measured", () => {
    const cells = [["Date", "Water EC", "Tank EC"], [45_778, 0.4, 1.6]];
    expect(readLog({ cells }, { columns: { 1: { quantity: "input EC" } } }).columns[1]?.quantity).toBe("input EC");
    expect(columnsOf(["Date", "Water", "Drain", "Runoff pH"], [45_778, 2, 3, 6]).slice(1, 3))
      .toEqual(["asks input EC or input pH or input volume", "asks runoff EC or runoff pH or runoff volume"]);
  });

  it("is another column than the feed's, even where both speak of water", () => {
    expect(columnsOf(["Date", "Feed water EC", "Runoff EC"], [45_778, 1.6, 2.4])[1]).toBe("input EC");
    for (const [one, other] of [["Feed water EC", "Tank EC"], ["Input water EC", "Tank EC"], ["Tank water EC", "Feed EC"]] as const)
      expect(columnsOf(["Date", one, other], [45_778, 1.6, 1.7])).toEqual(["date", "input EC", "asks input EC"]);
  });
});

describe("an extract of the medium", () => {
  it("is another method beside the runoff, and asked about alone", () => {
    expect(columnsOf(["Date", "Extract EC", "Runoff EC"], [45_778, 1.4, 2.4])[1]).toBe("other");
    expect(columnsOf(["Date", "Extract EC", "Runoff pH"], [45_778, 1.4, 6])[1]).toBe("asks runoff EC");
    expect(columnsOf(["Date", "Extract EC"], [45_778, 1.4])[1]).toBe("asks runoff EC");
  });
});

it("an extract that a person has answered stays what it is answered to be", () => {
  const cells = [["Date", "Extract EC", "Runoff EC"], [45_778, 1.4, 2.4]];
  expect(readLog({ cells }, { columns: { 1: { quantity: "input EC" } } }).columns[1]?.quantity).toBe("input EC");
});

describe("two columns of one quantity", () => {
  it("the plain one is read, whichever stands first; the other is asked where it is an EC, a pH or a volume", () => {
    expect(columnsOf(["Date", "Runoff EC 2", "Runoff EC"], [45_778, 2.3, 2.4])).toEqual(["date", "asks runoff EC", "runoff EC"]);
    expect(columnsOf(["Date", "Runoff pH", "Runoff pH pen"], [45_778, 6, 6.1])).toEqual(["date", "runoff pH", "asks runoff pH"]);
    expect(columnsOf(["Date", "Runoff pH pen", "Runoff pH"], [45_778, 6.1, 6])).toEqual(["date", "asks runoff pH", "runoff pH"]);
    expect(columnsOf(["Date", "Runoff L morning", "Runoff L"], [45_778, 1, 2])).toEqual(["date", "asks runoff volume", "runoff volume"]);
  });

  it("the first of two plain ones is read", () => {
    expect(columnsOf(["Date", "Runoff EC", "Drain EC"], [45_778, 2.4, 2.3])).toEqual(["date", "runoff EC", "asks runoff EC"]);
  });

  it("both are asked about where neither is plain", () => {
    expect(columnsOf(["Date", "Runoff EC 1", "Runoff EC 2"], [45_778, 2.4, 2.3]))
      .toEqual(["date", "asks runoff EC", "asks runoff EC"]);
  });

  it("of temperatures and humidities the second is passed over without a question", () => {
    expect(columnsOf(["Date", "RH", "Humidity"], [45_778, 55, 56])).toEqual(["date", "humidity", "other"]);
    expect(columnsOf(["Date", "Air temp", "Room temp"], [45_778, 22, 23])).toEqual(["date", "air temperature", "other"]);
  });

  it("notes, and the parts of a pot's name, may stand in several", () => {
    expect(columnsOf(["Date", "Bed", "Pot", "Runoff EC", "Notes", "Remarks"], [45_778, "A", 1, 2.4, "fine", "dry"]))
      .toEqual(["date", "vessel", "vessel", "runoff EC", "notes", "notes"]);
  });
});
