import { describe, expect, test } from "vitest";
import {
  bandFor,
  columnLetters,
  drainedMedia,
  ec25,
  flushPlan,
  flushStanding,
  flushTarget,
  litres,
  reportOf,
} from "../../../src/index";
import { flushSheet } from "../../../taskpane/templates/flush-sheet";
import { computed, rowOf } from "./computed";

/** A pepper in coir at 5.6 mS/cm whose keeper has said how large the pot is and what is poured. */
const pepper = {
  name: "Pepper 2",
  medium: "coir",
  feeder: "medium",
  day: 46_082.375,
  runoffEc: 5.6,
  runoffPh: 5.7,
  feedEc: 1.8,
} as const;
const asked = { "Container (L)": 10, "EC of what you pour (mS/cm)": 0.4 };
const sheetOf = (typed: Readonly<Record<string, string | number | undefined>> = {}, pot: object = pepper) =>
  computed(flushSheet(pot), typed);

const firstPortion = rowOf(flushSheet(), "portion 1");
const planHead = firstPortion - 1;

/** Portions of 2 L into the rows after the first reading. */
const poured = (...ecs: number[]): Record<string, number> =>
  Object.fromEntries(
    ecs.flatMap((ec, i) => [
      [`C${firstPortion + i}`, 2],
      [`D${firstPortion + i}`, 5.8],
      [`E${firstPortion + i}`, ec],
    ]),
  );

describe("the flush sheet made from a pot", () => {
  test("holds what the log tells: medium, feeder, runoff EC and pH, feed EC and day; container and water are asked for", async () => {
    const sheet = await sheetOf();
    expect(
      [
        "Pot",
        "Medium",
        "Feeder",
        "Runoff EC before (mS/cm)",
        "Runoff pH before",
        "Feed at full strength, EC (mS/cm)",
        "Day and time of the flush",
      ].map(sheet.beside),
    ).toEqual(["Pepper 2", "coir", "medium", 5.6, 5.7, 1.8, 46_082.375]);
    expect(sheet.at("A1")).toBe("Flush: Pepper 2");
  });

  test("before container and water are there it plans nothing and says which is missing", async () => {
    const bare = await sheetOf();
    expect(bare.beside("The stop check says")).toBe("fill in the container");
    expect([bare.beside("Pour next (L)"), bare.at(`J${planHead}`), bare.beside("EC to reach (mS/cm)")]).toEqual([
      "",
      "",
      "",
    ]);
    const noWater = await sheetOf({ "Container (L)": 10 });
    expect(noWater.beside("The stop check says")).toBe("fill in the EC of what you pour");
    expect(noWater.at(`J${planHead}`)).toBe("");
    const noReadings = await sheetOf(asked, { medium: "coir" });
    expect(noReadings.beside("The stop check says")).toBe("fill in the pot's readings");
  });

  test("aims a tenth inside coir's 3.5: 3.15 mS/cm, unless another EC is typed; pours at the middle of coir's pH", async () => {
    const sheet = await sheetOf(asked);
    expect(sheet.beside("EC to reach (mS/cm)")).toBeCloseTo(0.9 * 3.5, 9);
    expect(sheet.beside("pH to pour at")).toBe(bandFor("coir").phAim);
    expect((await sheetOf({ ...asked, "Another EC to reach (mS/cm)": 2.5 })).beside("EC to reach (mS/cm)")).toBe(2.5);
  });

  test("at the top: the plan's portion, all of the plan, coir's weak feed, and when to stop", async () => {
    const sheet = await sheetOf(asked);
    const plan = flushPlan(ec25(5.6), ec25(3.15), { containerLitres: litres(10), waterEc: ec25(0.4), medium: "coir" });
    expect(sheet.beside("Pour next (L)")).toBeCloseTo(plan.portions[0]?.litres ?? NaN, 9);
    expect(sheet.at(`D${rowOf(flushSheet(), "Poured so far (L)")}`)).toBeCloseTo(plan.neededLitres, 9);
    expect(sheet.at(`F${rowOf(flushSheet(), "Pour next (L)")}`)).toBe("a weak feed");
    expect(sheet.beside("STOP when")).toBe("3.15 or less at pH 5.5 to 6.5");
    expect(sheet.beside("The stop check says")).toBe("keep going");
  });

  test("peat is washed with plain water, by what the medium's box says", async () => {
    expect((await sheetOf({ ...asked, Medium: "peat" })).at(`F${rowOf(flushSheet(), "Pour next (L)")}`)).toBe(
      "plain water",
    );
  });

  test("the plan stands beside the portions, each in its line", async () => {
    const sheet = await sheetOf(asked);
    expect(["J", "K", "L", "M"].map((column) => sheet.at(`${column}${planHead}`))).toEqual([
      "portion",
      "litres",
      "litres so far",
      "expected runoff EC",
    ]);
    expect(sheet.at(`G${firstPortion}`)).toMatch(/^plan: 1\.\d L so far, EC 4\.\d\d expected$/);
  });

  test.each(drainedMedia)("the plan for a very salty pot of %s keeps to the rows left for it", async (medium) => {
    const sheet = await sheetOf({
      ...asked,
      Medium: medium,
      "Runoff EC before (mS/cm)": 19,
      "Another EC to reach (mS/cm)": 0.8,
    });
    expect(sheet.at(`J${planHead}`)).toBe("portion");
    expect(sheet.at(`J${firstPortion + 14}`)).toBeUndefined();
  });

  test("three portions of 2 L from 5.6 to 4.4, 3.6 and 3.1 at pH 5.8: keep going, keep going, stop in band at 6 L", async () => {
    const sheet = await sheetOf({ ...asked, ...poured(4.4, 3.6, 3.1) });
    expect([0, 1, 2].map((i) => sheet.at(`F${firstPortion + i}`))).toEqual([
      "keep going",
      "keep going",
      "stop: in band",
    ]);
    expect(sheet.beside("Poured so far (L)")).toBe(6);
    expect(sheet.at(`F${firstPortion + 3}`)).toBe("");
    expect([sheet.beside("The stop check says"), sheet.beside("Pour next (L)")]).toEqual(["stop: in band", ""]);
    expect(sheet.beside("Runoff EC now (mS/cm)")).toBe(3.1);
  });

  test("3.3 is inside coir's 3.5 and not yet at 3.15: one portion more, so that it stays inside", async () => {
    const sheet = await sheetOf({ ...asked, ...poured(4.4, 3.3) });
    expect([sheet.at(`F${firstPortion + 1}`), sheet.beside("The stop check says")]).toEqual([
      "keep going",
      "keep going",
    ]);
  });

  test("litres left follow the pot's own readings: from 8.4 over water of 0.4, halved by each 2 L, 2 L more to 1.4", async () => {
    const sheet = await sheetOf({
      ...asked,
      ...poured(4.4, 2.4),
      "Runoff EC before (mS/cm)": 8.4,
      "Another EC to reach (mS/cm)": 1.4,
    });
    expect(sheet.beside("Litres still needed (L)")).toBeCloseTo(2, 6);
  });

  test("a portion without its pH: cannot say, and nothing more to pour", async () => {
    const sheet = await sheetOf({ ...asked, [`C${firstPortion}`]: 2, [`E${firstPortion}`]: 4.4 });
    expect([sheet.at(`F${firstPortion}`), sheet.beside("Pour next (L)")]).toEqual(["cannot say", ""]);
  });

  test.each([[[]], [[4.4]], [[4.4, 3.6]], [[4.4, 3.3]], [[4.4, 3.6, 3.1]], [[5.5, 5.5, 5.5]], [[4, 4.6]], [[2, 1]]])(
    "after %j the sheet and the engine pour the same next portion", async (ecs) => {
      const sheet = await sheetOf({ ...asked, ...poured(...ecs) });
      const [band, waterEc] = [bandFor("coir"), ec25(0.4)];
      const targetEc = flushTarget(ec25(band.ec[1]), waterEc);
      const plan = flushPlan(ec25(5.6), targetEc, { containerLitres: litres(10), waterEc, medium: "coir" });
      const readings = [
        { ph: 5.7, ec: 5.6, litres: undefined },
        ...ecs.map((ec) => ({ ph: 5.8, ec, litres: litres(2) })),
      ];
      const { says, nextLitres } = flushStanding(readings, {
        band,
        containerLitres: litres(10),
        waterEc,
        targetEc,
        plan,
      });
      expect(sheet.beside("The stop check says")).toBe(says.answer);
      const onSheet = sheet.beside("Pour next (L)");
      if (nextLitres === undefined) expect(onSheet).toBe("");
      else expect(onSheet).toBeCloseTo(nextLitres, 9);
    },
  );

  test("own limits of 1.5 to 3.0 at pH 5.6 to 6.4 win: to 2.7, poured at 6.0", async () => {
    const sheet = await sheetOf(asked, { ...pepper, limits: [5.6, 6.4, 1.5, 3] });
    expect(sheet.beside("EC to reach (mS/cm)")).toBeCloseTo(2.7, 9);
    expect(sheet.beside("pH to pour at")).toBeCloseTo(6, 9);
    expect(
      (await sheetOf({ ...asked, ...poured(2.6) }, { ...pepper, limits: [5.6, 6.4, 1.5, 3] })).beside(
        "The stop check says",
      ),
    ).toBe("stop: in band");
  });

  test("acid for what is poured waits for alkalinity, pH and strength; 244 mg/L of bicarbonate is 200 mg/L as CaCO3", async () => {
    const label = "Acid (mL; citric acid g)";
    expect((await sheetOf(asked)).beside(label)).toBe("");
    const given = { ...asked, "pH of this water now": 7.5, "Strength of the bottle (% by mass)": 30 };
    const asCarbonate = await sheetOf({ ...given, "Alkalinity of this water": 200 });
    const asBicarbonate = await sheetOf({
      ...given,
      "Alkalinity of this water": 244,
      "Its unit, as the report prints it": "mg/L HCO3",
    });
    expect(Number(asBicarbonate.beside(label)) / Number(asCarbonate.beside(label))).toBeCloseTo(1, 2);
    expect(
      (await sheetOf({ ...given, "Alkalinity of this water": 200, "pH of this water now": 5 })).beside(label),
    ).toBe("no acid needed");
  });

  test("feeds 1.1 on the day, 1.2 the next, 1.8 from day 7; looks fall due at 0, 1, 24 and 48 h and daily to the seventh", async () => {
    const sheet = await sheetOf(asked);
    const from = rowOf(flushSheet(), "0 h");
    const due = Array.from({ length: 9 }, (_, i) => Number(sheet.at(`B${from + i}`)) - pepper.day);
    [0, 1 / 24, 1, 2, 3, 4, 5, 6, 7].forEach((days, i) => {
      expect(due[i]).toBeCloseTo(days, 9);
    });
    expect(
      [sheet.at(`C${from}`), sheet.at(`C${from + 2}`), sheet.at(`C${from + 8}`)].map((ec) => Number(ec).toFixed(2)),
    ).toEqual(["1.10", "1.20", "1.80"]);
  });
});

describe("the days after, on the flush sheet", () => {
  // What a grower would say of it: the flush is an event, what he noted is kept, days without a reading are none.
  test("are read back with their notes: 4 L poured is a flush, a look at EC 3.1 noted as a little limp", async () => {
    const from = rowOf(flushSheet(), "The days after") + 1;
    const looks = {
      [`D${from}`]: 5.8,
      [`E${from}`]: 3,
      [`D${from + 2}`]: 5.9,
      [`E${from + 2}`]: 3.1,
      [`H${from + 2}`]: "a little limp",
    };
    const template = flushSheet(pepper);
    const sheet = await sheetOf({ ...asked, ...poured(4, 3.1), ...looks });
    const rows = template.rows.slice(from - 2, from + 8).map((_, row) =>
      Array.from({ length: 8 }, (__, column) => sheet.at(`${columnLetters(column)}${from - 1 + row}`) ?? ""));
    const { reading, judgement } = reportOf({ grid: { cells: rows }, band: bandFor("coir") });
    expect(reading.questions).toEqual([]);
    expect(reading.rows.map(({ runoffEc, notes }) => [runoffEc, notes])).toEqual([
      [3, expect.stringMatching(/^flushed with 4\.0 L$/)], [3.1, "a little limp"],
    ]);
    expect(judgement?.phase).toBe("after a flush");
  });

  test("no water poured is no flush: the note of the first look is empty", async () => {
    const from = rowOf(flushSheet(), "The days after") + 1;
    expect((await sheetOf(asked)).at(`H${from}`)).toBe("");
  });
});

test("why the check says so has room for its five lines on paper: 5 of 14 points", () => {
  const { heights } = flushSheet(pepper);
  expect(heights[rowOf(flushSheet(pepper), "The stop check says") - 1]).toBeGreaterThanOrEqual(5 * 14);
});
