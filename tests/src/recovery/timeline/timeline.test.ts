import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { airCelsius, bandFor, type EarlierBand, ownBand, ec25, humidityPercent, litres, type LogRow, ph, spread, timeline, type TimelinePoint } from "../../../../src/index";

const empty: Omit<LogRow, "row"> = {
  day: undefined, vessel: undefined, inputEc: undefined, inputPh: undefined, runoffEc: undefined, runoffPh: undefined,
  inputLitres: undefined, runoffLitres: undefined, solutionCelsius: undefined, airCelsius: undefined, humidityPercent: undefined,
  notes: undefined, events: [],
};
let next = 0;
const row = (given: Partial<LogRow>): LogRow => ({ ...empty, row: next++, ...given });
const runoff = (day: number, value: number, more: Partial<LogRow> = {}): LogRow => row({ day, runoffEc: ec25(value), ...more });
const flushed = { events: [{ kind: "flush", words: "flushed 6 L" }] } as const;
const lane = (rows: readonly LogRow[], name: string) => timeline(rows).lanes.find((each) => each.name === name);

describe("timeline: the axis", () => {
  it("no rows give no span, no lanes and no readings", () => {
    expect(timeline([])).toMatchObject({ span: undefined, lanes: [], readings: [], events: [] });
  });

  it("rows in any order stand in order of time, each with the row of the sheet it came from", () => {
    const model = timeline([runoff(12, 3, { row: 5 }), runoff(10, 2, { row: 6 }), runoff(11, 2.5, { row: 7 })]);
    expect(model.span).toEqual([10, 12]);
    expect(model.readings.map(({ row: place }) => place)).toEqual([6, 7, 5]);
  });

  it("a row without a date among dated ones is counted as undated, not drawn", () => {
    const model = timeline([runoff(10, 2), row({ runoffEc: ec25(9) })]);
    expect([model.undated, model.readings.length]).toEqual([1, 1]);
  });

  it("a log without dates is drawn by the order of its rows, 1, 2, 3, and told in readings, not days", () => {
    const rows = [1, 2, 3, 4, 5].map((value) => row({ runoffEc: ec25(value) }));
    const model = timeline(rows);
    expect([model.axis, model.span]).toEqual(["readings", [1, 5]]);
    expect(model.lanes[0]?.trend.words).toBe("rising 1.000 each (5 readings, so far)");
  });

  it("a flush in a log without dates is watched at no time: nobody knows which day it was", () => {
    const model = timeline([row({ runoffEc: ec25(3), ...flushed }), row({ runoffEc: ec25(2) })]);
    expect(model.events.map(({ kind, day }) => [kind, day])).toEqual([["flush", 1]]);
    expect(model.watches).toEqual([]);
  });

  it("one vessel of several is drawn alone", () => {
    expect(timeline([runoff(1, 2, { vessel: "T1" }), runoff(2, 3, { vessel: "P1" })], { vessel: "P1" }).readings).toHaveLength(1);
  });
});

describe("timeline: the lanes", () => {
  it("what the log does not hold has no lane", () => {
    expect(timeline([runoff(1, 2)]).lanes.map(({ name }) => name)).toEqual(["EC"]);
  });

  it("the reading of a row tells what was read in it and nothing else, and without a band no flags", () => {
    const [reading] = timeline([runoff(1, 2)]).readings;
    expect(reading?.values).toEqual([{ lane: "EC", role: "runoff", value: 2 }]);
    expect(reading?.flags).toBeUndefined();
  });

  it("input and runoff are two series of one lane; the ratio 3 / 1.5 is 2; the band is the runoff's", () => {
    const model = timeline([runoff(1, 3, { inputEc: ec25(1.5), inputPh: ph(5.8), runoffPh: ph(6) })], { band: bandFor("coir") });
    expect(model.lanes.map(({ name, series, limits }) => [name, series.map(({ role }) => role), limits])).toEqual([
      ["EC", ["input", "runoff"], [1.2, 3.5]],
      ["pH", ["input", "runoff"], [5.5, 6.5]],
      ["salt ratio", ["only"], undefined],
    ]);
    expect(model.readings[0]?.values.find(({ lane: name }) => name === "salt ratio")?.value).toBe(2);
    expect(model.readings[0]?.flags).toEqual([]);
  });

  it("no ratio is drawn against plain water, below 0.5: 3 / 0.3 on the day of a flush, nor against nothing read", () => {
    expect(lane([runoff(1, 3, { inputEc: ec25(0.3) })], "salt ratio")).toBeUndefined();
    expect(lane([runoff(1, 3, { inputEc: ec25(0.5) })], "salt ratio")?.series[0]?.segments[0]?.[0]?.value).toBe(6);
    expect(lane([runoff(1, 3), row({ day: 2, inputEc: ec25(2) })], "salt ratio")).toBeUndefined();
  });

  it("a runoff of 60 over an input of 0.5, 120 times, is no bed's ratio: nothing is drawn and nothing breaks", () => {
    expect(lane([runoff(1, 60, { inputEc: ec25(0.5) })], "salt ratio")).toBeUndefined();
  });

  it("plant trouble: the worst of posture, new growth, spread and roots at each look, 0 to 3; a row without a look tells nothing", () => {
    const looks = [{ posture: 0, newGrowth: 0 }, undefined, { posture: 1, newGrowth: 2 }, { roots: 3, spread: undefined }];
    const rows = looks.map((plant, place) => row({ day: place + 1, plant }));
    expect(lane(rows, "plant trouble")?.series[0]?.segments.flat().map(({ value }) => value)).toEqual([0, 2, 3]);
    expect(lane([row({ day: 1 }), row({ day: 2 })], "plant trouble")).toBeUndefined();
  });

  it("uptake: 2 L in and 0.5 L out leave 1.5 L a watering, however many days lie between; more out than in tells nothing", () => {
    const poured = { inputLitres: litres(2), runoffLitres: litres(0.5) };
    const rows = [row({ day: 1, ...poured }), row({ day: 3, ...poured, runoffLitres: litres(3) }), row({ day: 9, ...poured })];
    expect(lane(rows, "uptake")?.series[0]?.segments.flat().map(({ value }) => value)).toEqual([1.5, 1.5]);
    expect(lane([row({ day: 1, ...poured, runoffLitres: litres(2) })], "uptake")?.series[0]?.segments[0]?.[0]?.value).toBe(0);
  });

  it("uptake: one volume without the other tells nothing", () => {
    expect(lane([row({ day: 1, inputLitres: litres(2) }), row({ day: 2, runoffLitres: litres(1) })], "uptake")).toBeUndefined();
  });

  it("air at 25 C and 60 % has a VPD of 1.267 kPa (FAO 56, equation 11), and then no lane of its temperature", () => {
    const model = timeline([row({ day: 1, airCelsius: airCelsius(25), humidityPercent: humidityPercent(60) })]);
    expect(model.lanes.map(({ name, unit }) => [name, unit])).toEqual([["VPD", "kPa"]]);
    expect(model.lanes[0]?.series[0]?.segments[0]?.[0]?.value).toBeCloseTo(1.267, 3);
  });

  it("air whose humidity nobody read is drawn as its temperature; a humidity typed as 0.6, or frost, draws no VPD", () => {
    const at = (celsius: number, humidity?: number): string[] => {
      const air = { airCelsius: airCelsius(celsius), humidityPercent: humidity === undefined ? undefined : humidityPercent(humidity) };
      return timeline([row({ day: 1, ...air })]).lanes.map(({ name }) => name);
    };
    expect([at(25), at(25, 0.6), at(-3, 60)]).toEqual([["air temperature"], ["air temperature"], ["air temperature"]]);
    expect(timeline([row({ day: 1, humidityPercent: humidityPercent(60) })]).lanes).toEqual([]);
  });

  it("a pause of 20 days in a daily log opens the line; readings every 7 days do not", () => {
    const daily = [1, 2, 3, 23, 24].map((day) => runoff(day, 2));
    const weekly = [1, 8, 15, 22].map((day) => runoff(day, 2));
    expect(lane(daily, "EC")?.series[0]?.segments.map((each) => each.length)).toEqual([3, 2]);
    expect(lane(weekly, "EC")?.series[0]?.segments.map((each) => each.length)).toEqual([4]);
  });
});

// What held then is what a grower held the row against: common practice, no source.
describe("timeline: limits that changed", () => {
  /** Coir's own EC 1.2 to 3.5 at pH 5.5 to 6.5 until day 13, then 2 to 6 at the same pH. */
  const coir: EarlierBand = { band: bandFor("coir"), until: 13 };
  const today = ownBand(ph(5.5), ph(6.5), ec25(2), ec25(6));
  const days = [10, 11, 12, 13, 14];
  const rows = days.map((day) => runoff(day, day < 13 ? 4 : 5, { runoffPh: ph(6) }));
  const bands = (given: readonly LogRow[], earlier: readonly EarlierBand[], name = "EC") =>
    timeline(given, { band: today, earlier }).lanes.find((each) => each.name === name)?.bands;

  it("the EC's band steps on day 13 from 1.2 to 3.5 to 2 to 6; the pH's, which stayed, has no step; today's is the lane's", () => {
    expect(bands(rows, [coir])).toEqual([
      { from: undefined, to: 13, limits: [1.2, 3.5] },
      { from: 13, to: undefined, limits: [2, 6] },
    ]);
    expect(bands(rows, [coir], "pH")).toEqual([{ from: undefined, to: undefined, limits: [5.5, 6.5] }]);
    expect(timeline(rows, { band: today, earlier: [coir] }).lanes[0]?.limits).toEqual([2, 6]);
  });

  it("each row is flagged by what stood then: EC 4 was too high before day 13, and 5 is not from then on", () => {
    const flags = timeline(rows, { band: today, earlier: [coir] }).readings.map((each) => each.flags);
    expect(flags).toEqual([["runoff EC high"], ["runoff EC high"], ["runoff EC high"], [], []]);
  });

  it("a reading at noon of the day of the change is flagged by the new limits, one the evening before by the old", () => {
    const noons = [12.9, 13.5].map((day) => runoff(day, 4, { runoffPh: ph(6) }));
    expect(timeline(noons, { band: today, earlier: [coir] }).readings.map((each) => each.flags)).toEqual([["runoff EC high"], []]);
  });

  it("a change after the last reading leaves the old band over all of them, today's waiting; one before the first leaves today's", () => {
    const later: EarlierBand = { ...coir, until: 15 };
    expect(bands(rows, [later])).toEqual([
      { from: undefined, to: undefined, limits: [1.2, 3.5] },
      { from: 15, to: undefined, limits: [2, 6] },
    ]);
    expect(bands(rows, [{ ...coir, until: 10 }])).toEqual([{ from: undefined, to: undefined, limits: [2, 6] }]);
  });

  it("three sets one after the other are three stretches; a set that no reading fell into is left out", () => {
    const middle: EarlierBand = { band: ownBand(ph(5.5), ph(6.5), ec25(1), ec25(4)), until: 14 };
    expect(bands(rows, [{ ...coir, until: 12 }, middle])?.map(({ from, to, limits }) => [from, to, limits])).toEqual([
      [undefined, 12, [1.2, 3.5]], [12, 14, [1, 4]], [14, undefined, [2, 6]],
    ]);
    expect(bands(rows, [{ ...coir, until: 15 }, { ...middle, until: 16 }])?.map(({ from }) => from)).toEqual([undefined, 16]);
  });

  it("without dates nobody can tell what held when: today's limits hold for every row", () => {
    const undated = rows.map((each) => ({ ...each, day: undefined }));
    expect(bands(undated, [coir])).toEqual([{ from: undefined, to: undefined, limits: [2, 6] }]);
    expect(timeline(undated, { band: today, earlier: [coir] }).readings.every((each) => each.flags?.length === 0)).toBe(true);
  });
});

describe("timeline: trend, events and the watch", () => {
  const rising = Array.from({ length: 10 }, (_, day) => runoff(day, 2 + day * 0.1));

  it("0.1 mS/cm more every day over 10 days is told as rising 0.100 a day", () => {
    expect(lane(rising, "EC")?.trend).toMatchObject({ answer: "rising", words: "rising 0.100 a day (10 readings, last 14 days)" });
  });

  it("three readings are too few, whatever they say", () => {
    expect(lane(rising.slice(0, 3), "EC")?.trend).toMatchObject({ answer: "too few readings", changePerDay: undefined });
  });

  it("readings that go up and down have no clear trend", () => {
    const wavering = [2, 2.4, 2.1, 2.3, 2, 2.4].map((value, day) => runoff(day, value));
    expect(lane(wavering, "EC")?.trend.answer).toBe("no clear trend");
  });

  it("a flush within the last two weeks starts the trend anew", () => {
    const falling = Array.from({ length: 6 }, (_, day) => runoff(11 + day, 4 - day * 0.3));
    const trend = lane([...rising, runoff(10, 4.5, flushed), ...falling], "EC")?.trend;
    expect(trend).toMatchObject({ answer: "falling", words: "falling 0.300 a day (6 readings, since the flush)" });
  });

  it("a flush on day 10 is watched from day 11 to day 12; portions on one day, or the day after, are one flush", () => {
    const watched = (...days: number[]) => timeline(days.map((day) => runoff(day, 3, flushed))).watches;
    expect(watched(10)).toEqual([{ flushed: 10, from: 11, to: 12 }]);
    expect(watched(10, 10.2, 10.4)).toHaveLength(1);
    expect(watched(10, 30).map(({ flushed: day }) => day)).toEqual([10, 30]);
  });
});

describe("spread", () => {
  const points = fc
    .array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 1, maxLength: 600 })
    .map((values) => values.map((value, day): TimelinePoint => ({ day, value, row: day })));

  it("has at most so many slices, in order, low to middle to high, and the extremes of the whole are in it", () => {
    fc.assert(
      fc.property(points, fc.integer({ min: 1, max: 50 }), (given, slices) => {
        const told = spread(given, slices);
        const values = given.map(({ value }) => value);
        expect(told.length).toBeLessThanOrEqual(slices);
        expect(told.every(({ day, low, middle, high }, place) => low <= middle && middle <= high && day > (told[place - 1]?.day ?? -1))).toBe(true);
        expect(Math.max(...told.map(({ high }) => high))).toBe(Math.max(...values));
        expect(Math.min(...told.map(({ low }) => low))).toBe(Math.min(...values));
      }),
    );
  });

  it("a pause leaves no slice: days 1, 2 and 9, 10 in ten slices are four, each reading its own", () => {
    const given = [[1, 5], [2, 6], [9, 7], [10, 8]].map(([day = 0, value = 0], row) => ({ day, value, row }));
    expect(spread(given, 10).map(({ day, low, high }) => [day, low, high])).toEqual([[1, 5, 5], [2, 6, 6], [9, 7, 7], [10, 8, 8]]);
  });
});
