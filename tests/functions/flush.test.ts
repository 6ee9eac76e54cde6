import { describe, expect, it } from "vitest";
import { blankDeliveries, type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const deliveries = Object.keys(blankDeliveries) as (keyof typeof blankDeliveries)[];
const column = (...cells: CellValue[]): CellValue[][] => cells.map((cell) => [cell]);
const _ = undefined;

describe("FLUSHSTOP in a sheet", () => {
  it.each(deliveries)("cannot say when the last runoff pH is blank (blank delivered as %s)", (blank) => {
    const [[answer, reason] = []] = host.call("FLUSHSTOP", [column(6, 6, _), column(6, 5, 3), [["coir"]], _, _, [[true]]], blank);
    expect(answer).toBe("cannot say");
    expect(reason).toContain("runoff pH is missing");
  });

  it.each(deliveries)("rows not yet filled below the log are left out (blank delivered as %s)", (blank) => {
    const args = [column(6, 6, 6, _), column(6, 5.2, 4.4, _), [["coir"]], column(_, 2, 2, _), [[10]]];
    expect(host.call("FLUSHSTOP", args, blank)).toEqual([["keep going"]]);
  });

  it.each(deliveries)("a blank in the middle keeps its place: litres 2 of row 3 stay with row 3 (delivered as %s)", (blank) => {
    const args = [column(6, _, 6), column(6, _, 4.4), [["coir"]], column(_, 2, 18), [[10]]];
    expect(host.call("FLUSHSTOP", args, blank)).toEqual([["stop: enough water"]]);
  });

  it.each(deliveries)("is blank while the band is blank (delivered as %s)", (blank) => {
    expect(host.call("FLUSHSTOP", [column(6), column(3), [[_]]], blank)).toEqual([[""]]);
  });

  it("takes the grower's own four limits, which win: EC 3.8 within 3 to 4", () => {
    expect(host.call("FLUSHSTOP", [column(6), column(3.8), [[5.5, 6.5, 3, 4]]])).toEqual([["stop: in band"]]);
  });

  it.each([
    ["an unknown medium, listing the known", [column(6), column(3), [["moon dust"]]], "coir, peat, bark, mineral wool, inert, soil"],
    ["pH and EC of unlike length", [column(6, 6), column(3), [["coir"]]], "of the same length"],
    ["litres of unlike length", [column(6), column(3), [["coir"]], column(1, 2)], "of the same length"],
    ["a square of readings", [[[6, 6], [6, 6]], column(3, 3), [["coir"]]], "one column or one row"],
    ["text among the readings", [column("six"), column(3), [["coir"]]], 'runoff pH "six" is not a number'],
    ["negative litres", [column(6), column(3), [["coir"]], column(-2)], "litres poured -2 L cannot be"],
    ["an absurdly large pot", [column(6), column(3), [["coir"]], column(2), [[1e9]]], "container volume 1000000000 L cannot be"],
    ["low and high limits exchanged", [column(6), column(3), [[6.5, 5.5, 2, 3]]], "pH low limit 6.5 is out of order"],
  ])("refuses %s", (_title, args, says) => {
    const [[answer] = []] = host.call("FLUSHSTOP", args);
    expect(answer).toMatchObject({ error: "#VALUE!", reason: expect.stringContaining(says) as string });
  });

  it("hands on an error among the readings: #N/A stays #N/A", () => {
    expect(host.call("FLUSHSTOP", [column(6), column({ error: "#N/A" }), [["coir"]]])[0]?.[0]).toMatchObject({ error: "#N/A" });
  });
});

type Call = readonly [id: string, args: readonly (CellValue[][] | undefined)[]];

const one = (cell: CellValue): CellValue[][] => [[cell]];
const volume: Call = ["FLUSHVOLUME", [one(10), one(6), one(3), one(0.4), one("coir")]];
const plan: Call = ["FLUSHPLAN", [one(10), one(6), one(3), one(0.4), one("coir")]];
const left: Call = ["FLUSHLEFT", [column(0, 2, 2), column(8.4, 4.4, 2.4), one(1.4), one(0.4)]];
const need: Call = ["LEACHNEED", [one(1), one(2.5)]];
const acid: Call = ["ACIDDOSE", [one(1000), one(150), one(7.5), one(5.8), one("sulfuric"), one(93)]];
const alkali: Call = ["ALKALIDOSE", [one(1000), one(10), one(5), one(6), one("potassium hydroxide")]];
const scalars = [volume, plan, need, acid, alkali];

/** The call with one argument replaced. */
const having = ([id, args]: Call, index: number, cells: CellValue[][]): Call => [id, args.map((old, each) => (each === index ? cells : old))];
const answer = ([id, args]: Call, blank: keyof typeof blankDeliveries = "zero"): CellValue | undefined => host.call(id, args, blank)[0]?.[0];

describe("the other flush and dose functions in a sheet", () => {
  const blanks = scalars.flatMap(([id, args]) => args.map((_arg, index) => [id, index, having([id, args], index, one(_))] as const));
  /** Where a blank that arrives as 0 is pure water. */
  const waterAt: Readonly<Record<string, number>> = { FLUSHVOLUME: 3, FLUSHPLAN: 3, LEACHNEED: 0 };

  it.each(deliveries)("each answers blank while any of its arguments is blank, but for water that arrives as 0 (delivered as %s)", (blank) => {
    for (const [id, index, call] of blanks) {
      const pureWater = blank === "zero" && waterAt[id] === index;
      expect(answer(call, blank) === "", `${id}, argument ${index + 1}`).toBe(!pureWater);
    }
    expect(answer(having(left, 2, one(_)), blank)).toBe("");
    expect(answer(having(left, 3, one(_)), blank) === "").toBe(blank !== "zero");
  });

  it.each(deliveries)("FLUSHLEFT takes a portion without a reading as water poured (blank delivered as %s)", (blank) => {
    expect(answer(["FLUSHLEFT", [column(_, 2, 2, 2), column(16.4, 8.4, _, 2.4), one(1.4), one(0.4)]], blank)).toBeCloseTo(2, 9);
  });

  it.each(deliveries)("FLUSHLEFT cannot say below three readings, with the reason beside it (blank delivered as %s)", (blank) => {
    const row = host.call("FLUSHLEFT", [column(_, 2, _), column(6, 4, _), one(3), one(0.4), one(true)], blank)[0];
    expect(row?.[0]).toBe("cannot say");
    expect(row?.[1]).toContain("runoff EC read 2 times is too few");
  });

  const refused: (readonly [title: string, call: Call, error: string, says: string])[] = [
    ...scalars.flatMap(([id, args]) => [
      [`${id} of text`, having([id, args], 0, one("ten")), "#VALUE!", "is not a number"] as const,
      [`${id} of a negative number`, having([id, args], 0, one(-1)), "#VALUE!", "cannot be"] as const,
      [`${id} of something absurdly large`, having([id, args], 0, one(1e12)), "#VALUE!", "1000000000000"] as const,
      [`${id} of an error cell`, having([id, args], 0, one({ error: "#N/A" })), "#N/A", ""] as const,
    ]),
    ["FLUSHVOLUME of unlike shapes", having(having(volume, 0, column(1, 2)), 1, column(6, 6, 6)), "#VALUE!", "ranges of the same shape"],
    ["FLUSHPLAN of a range", having(plan, 0, column(1, 2)), "#VALUE!", "one cell"],
    ["ACIDDOSE of a range", having(acid, 0, column(1, 2)), "#VALUE!", "one cell"],
    ["FLUSHLEFT of unlike lengths", having(left, 0, column(2, 2)), "#VALUE!", "of the same length"],
    ["FLUSHLEFT of negative litres", having(left, 0, column(0, -2, 2)), "#VALUE!", "litres poured -2 L cannot be"],
    ["FLUSHLEFT of text", having(left, 1, column(6, "low", 4)), "#VALUE!", 'runoff EC "low" is not a number'],
    ["FLUSHVOLUME in an unknown medium", having(volume, 4, one("moon dust")), "#VALUE!", "coir, peat, bark, mineral wool, inert, soil"],
    ["FLUSHPLAN in an unknown medium", having(plan, 4, one("moon dust")), "#VALUE!", "coir, peat, bark, mineral wool, inert, soil"],
    ["ACIDDOSE of an unknown acid", having(acid, 4, one("vinegar")), "#VALUE!", "sulfuric, phosphoric, nitric, hydrochloric, citric"],
    ["ALKALIDOSE of an unknown base", having(alkali, 4, one("lime")), "#VALUE!", "potassium bicarbonate, potassium carbonate, potassium hydroxide"],
    ["FLUSHVOLUME below the water's EC", having(volume, 2, one(0.3)), "#VALUE!", "cannot go below the water"],
    ["FLUSHPLAN at the water's EC", having(plan, 2, one(0.4)), "#VALUE!", "cannot go below the water"],
    ["FLUSHLEFT below the water's EC", having(left, 2, one(0.3)), "#VALUE!", "cannot go below the water"],
    ["FLUSHVOLUME of uS/cm", having(volume, 1, one(2400)), "#VALUE!", "divide uS/cm by 1000"],
    ["LEACHNEED of a feed too strong", having(need, 0, one(8)), "#N/A", "feed weaker"],
    ["ACIDDOSE to pH 3", having(acid, 3, one(3)), "#N/A", "4.5 to 7.5"],
    ["ACIDDOSE upwards", having(acid, 2, one(5)), "#VALUE!", "ALKALIDOSE raises it"],
    ["ACIDDOSE of 99.9 % sulfuric", having(acid, 5, one(99.9)), "#N/A", "read it on the bottle"],
    ["ACIDDOSE of 120 %", having(acid, 5, one(120)), "#VALUE!", "up to 100 % by mass"],
    ["ALKALIDOSE downwards", having(alkali, 2, one(7)), "#VALUE!", "ACIDDOSE lowers it"],
  ];

  it.each(refused)("refuses %s", (_title, call, error, says) => {
    expect(answer(call)).toMatchObject({ error, reason: expect.stringContaining(says) as string });
  });
});

describe("FLUSHPLAN as it spills", () => {
  it("has a header row, and portions that sum to FLUSHVOLUME", () => {
    const [header, ...rows] = host.call(...plan);
    expect(header).toEqual(["portion", "litres", "litres so far", "expected runoff EC"]);
    expect(rows.reduce((sum, [, poured]) => sum + Number(poured), 0)).toBeCloseTo(Number(answer(volume)), 9);
    expect(rows.at(-1)?.[3]).toBeCloseTo(3, 9);
  });

  it("says in a closing row that it ends at the over-flush limit: 7 L for 10 L of soil", () => {
    const rows = host.call("FLUSHPLAN", [one(10), one(9), one(1), one(0.4), one("soil")]);
    expect(rows.at(-1)).toEqual(["stop here: over-flush limit 7 L; by the model the target needs 23.3 L", "", "", ""]);
    expect(rows.at(-2)?.[2]).toBeCloseTo(7, 9);
  });

  it("says that there is nothing to pour when the runoff is at the target", () => {
    expect(host.call("FLUSHPLAN", [one(10), one(3), one(3), one(0.4), one("coir")])[1]).toEqual(["nothing to pour: the runoff is at the target", "", "", ""]);
  });
});

describe("doses in a sheet", () => {
  it.each([
    [1, "alkalinity is missing: measure it"],
    [5, "percent strength is missing: read it on the bottle; no strength, no dose"],
  ])("ACIDDOSE stays blank without argument %d + 1 and says so under explain", (index, says) => {
    const [id, args] = having(acid, index, one(_));
    const [cell, reason] = host.call(id, [...args, one(true)])[0] ?? [];
    expect(cell).toBe("");
    expect(reason).toContain(says);
  });

  it("ACIDDOSE under explain gives 65 mL (65.998 rounded down) and every caution", () => {
    const [dose, reason] = host.call("ACIDDOSE", [...acid[1], one(true)])[0] ?? [];
    expect(dose).toBe(65);
    for (const says of ["rounded down", "first 80 %, 52 mL", "never water into acid", "goggles", "label and local code win", "that is no fault", "of the same water", "reckoned at 25 C", "2 to 9 % less of this acid"]) {
      expect(reason).toContain(says);
    }
  });

  it("a column of leaching needs keeps its blanks", () => {
    expect(host.call("LEACHNEED", [column(1, _), one(2.5)], "null")).toEqual([[expect.closeTo(1 / 11.5, 9)], [""]]);
  });
});
