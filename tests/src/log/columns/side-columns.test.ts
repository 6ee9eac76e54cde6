import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

type Rows = readonly (readonly unknown[])[];

/** What becomes of a bare EC beside a column of these words: its two sides, or the question. */
function ecBeside(words: readonly unknown[], header = "Sample"): string {
  const rows: Rows = words.map((word, at) => [`2025-05-${String(1 + (at >> 1)).padStart(2, "0")}`, word, at % 2 === 0 ? 1.6 : 2.4]);
  const { columns, questions } = readLog({ cells: [["Date", header, "EC mS/cm"], ...rows] });
  const { bySide } = columns[2] ?? {};
  if (bySide !== undefined) return `${bySide.input}, ${bySide.runoff} by column ${bySide.column}`;
  const asked = questions.find(({ columns: waiting }) => waiting.includes(2));
  return asked === undefined ? String(columns[2]?.quantity) : asked.text.includes("write \"in\"") ? "asks, names the column" : "asks";
}
const sides = "input EC, runoff EC by column 1";

// Words by which a person knows feed from runoff. Common practice, no source.
describe("a column of words beside a bare EC", () => {
  it.each([
    ["feed", "runoff"], ["in", "out"], ["Input", "Drain"], ["tank", "leachate"], ["before", "runoff"], ["Zulauf", "Ablauf"], ["irrigation", "drainage"],
  ])("%s and %s tell its side row by row", (one, other) => {
    expect(ecBeside([one, other, one, other])).toBe(sides);
  });

  it("tells it with four cells of five in known words, blanks apart", () => {
    expect(ecBeside(["feed", "runoff", "feed", "runoff", "tap"])).toBe(sides);
    expect(ecBeside(["feed", "runoff", "feed", "tap"])).toBe("asks");
    expect(ecBeside(["feed", "runoff", "", ""])).toBe(sides);
  });

  it("tells nothing where all rows are of one side, or the words name both or none", () => {
    expect(ecBeside(["feed", "feed", "feed", "feed"])).toBe("asks");
    expect(ecBeside(["in/out", "runoff", "in/out", "runoff"])).toBe("asks, names the column");
    expect(ecBeside(["water", "runoff", "water", "runoff"])).toBe("asks, names the column");
    expect(ecBeside(["feed 1", "runoff 1", "feed 1", "runoff 1"])).toBe("asks, names the column");
    expect(ecBeside(["feed target", "runoff", "feed target", "runoff"])).toBe("asks, names the column");
    expect(ecBeside(["tap water", "drain", "tap water", "drain"])).toBe("asks, names the column");
    expect(ecBeside(["feed xyz", "runoff xyz", "feed xyz", "runoff xyz"])).toBe("asks, names the column");
    expect(ecBeside(["feed L", "drain", "feed L", "drain"])).toBe("asks, names the column");
    expect(ecBeside(["before", "after", "before", "after"])).toBe("asks, names the column");
  });

  it("is named in the question where two words take turns, and is no pot's or place's", () => {
    expect(ecBeside(["A", "B", "A", "B"])).toBe("asks, names the column");
    expect(ecBeside(["A", "B", "C", "A"])).toBe("asks");
    expect(ecBeside(["A", "A", "A", "A", "A", "A", "B", "B", "B"])).toBe("asks");
    expect(ecBeside(["A", "B", "A", "B"], "Pot")).toBe("asks");
    expect(ecBeside(["A", "B", "A", "B"], "Tent")).toBe("asks");
    expect(ecBeside(["coir", "peat", "coir", "peat"], "Medium")).toBe("asks");
  });
});

describe("the columns beside a column of sides", () => {
  const cells = [
    ["Date", "Sample", "EC mS/cm", "pH", "mL", "Air temp"],
    ["2025-05-01", "feed", 1.6, 5.8, 2000, 24], ["2025-05-01", "runoff", 2.4, 6.1, 400, 24],
  ];

  it("are read by side where their words say none: EC, pH and volume", () => {
    const { columns, rows, questions } = readLog({ cells });
    expect(questions).toEqual([]);
    expect(columns.map(({ bySide }) => bySide && [bySide.input, bySide.runoff]))
      .toEqual([undefined, undefined, ["input EC", "runoff EC"], ["input pH", "runoff pH"], ["input volume", "runoff volume"], undefined]);
    expect(columns.slice(1, 3).map(({ why }) => why.split(";")[0]))
      .toEqual(["it says which rows are input and which runoff", "input or runoff, as column B says in each row"]);
    expect(rows[0]).toMatchObject({ inputEc: 1.6, runoffEc: 2.4, inputPh: 5.8, runoffPh: 6.1, inputLitres: 2, runoffLitres: 0.4 });
  });

  it("keep the side that their own words say", () => {
    const own = [["Date", "Sample", "Feed EC", "Drain EC"], ["2025-05-01", "feed", 1.6, ""], ["2025-05-01", "runoff", "", 2.4]];
    expect(readLog({ cells: own }).columns.map(({ bySide }) => bySide)).toEqual(Array(4).fill(undefined));
  });

  it("are asked about where another column of their measure stands there too", () => {
    const two = [["Date", "Sample", "EC", "EC 2"], ["2025-05-01", "feed", 1.6, 1.7], ["2025-05-01", "runoff", 2.4, 2.5]];
    expect(readLog({ cells: two }).columns.map(({ bySide }) => bySide)).toEqual(Array(4).fill(undefined));
  });

  it("may have a target beside them, which is none of theirs", () => {
    const wish = [["Date", "Sample", "EC", "Target EC"], ["2025-05-01", "feed", 1.6, 1.7], ["2025-05-01", "runoff", 2.4, 2.5]];
    expect(readLog({ cells: wish }).columns[2]?.bySide).toEqual({ column: 1, input: "input EC", runoff: "runoff EC" });
  });

  it("are what is answered where a person has answered", () => {
    const { columns } = readLog({ cells }, { columns: { 2: { quantity: "runoff EC" } } });
    expect([columns[2]?.quantity, columns[2]?.bySide]).toEqual(["runoff EC", undefined]);
  });
});
