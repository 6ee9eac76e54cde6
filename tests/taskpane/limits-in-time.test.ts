import { describe, expect, it } from "vitest";
import { noPotChoices, type OwnLimits, type PotChoices } from "../../taskpane/choices";
import { canBeDated, earlierBands, holdingFrom, limitsChanged } from "../../taskpane/limits-in-time";

// A grower who changes the limits means from now on, unless they say otherwise: common practice, no source.

const limits = (ecLow: string, ecHigh: string): OwnLimits => ({ phLow: "5.5", phHigh: "6.5", ecLow, ecHigh });
const inCoir: PotChoices = { ...noPotChoices, medium: "coir" };
const changed = (pot: PotChoices, own: OwnLimits, newest: number | undefined): PotChoices =>
  ({ ...pot, ...limitsChanged(pot, own, newest) });
const ecOf = (pot: PotChoices) => earlierBands(pot).map(({ band, until }) => [...band.ec, until]);

describe("limits that a grower changes", () => {
  const first = changed(inCoir, limits("1", "5"), 46_093);
  const second = changed(first, limits("2", "6"), 46_100);

  it("hold from the newest reading's day; coir's 1.2 to 3.5 stood before the first own ones", () => {
    expect([first.since, ecOf(first)]).toEqual([46_093, [[1.2, 3.5, 46_093]]]);
  });

  it("changed again after more readings: both sets that stood are kept, oldest first", () => {
    expect([second.since, ecOf(second)]).toEqual([46_100, [[1.2, 3.5, 46_093], [1, 5, 46_100]]]);
  });

  it("four fields typed one after the other are one change, however far each leaves the limits from being limits", () => {
    const typing = [["", "5"], ["1", "5"], ["1", ""], ["1", "4"]] as const;
    const done = typing.reduce((pot, [low, high]) => changed(pot, limits(low, high), 46_093), inCoir);
    expect([done.own, done.since, ecOf(done)]).toEqual([limits("1", "4"), 46_093, [[1.2, 3.5, 46_093]]]);
  });

  it("typed back to what stood before, nothing has changed: its day and its own past hold again", () => {
    const back = changed(second, limits("1 ", "5"), 46_100);
    expect([back.since, ecOf(back)]).toEqual([46_093, [[1.2, 3.5, 46_093]]]);
    const emptied = changed(first, { phLow: "", phHigh: "", ecLow: " ", ecHigh: "" }, 46_093);
    expect(emptied).toEqual(inCoir);
  });

  it("emptied after more readings, the medium's hold from then on, and the own ones are the past", () => {
    const emptied = changed(first, { phLow: "", phHigh: "", ecLow: "", ecHigh: "" }, 46_100);
    expect([emptied.own, ecOf(emptied)]).toEqual([undefined, [[1.2, 3.5, 46_093], [1, 5, 46_100]]]);
  });

  it("without dates, or without any limits before, they hold for all rows", () => {
    for (const pot of [changed(inCoir, limits("1", "5"), undefined), changed(noPotChoices, limits("1", "5"), 46_093)])
      expect([pot.since, earlierBands(pot)]).toEqual([undefined, []]);
  });
});

describe("from when limits hold", () => {
  const dated = changed(changed(inCoir, limits("1", "5"), 46_093), limits("2", "6"), 46_100);
  const from = (since: number | undefined): PotChoices => ({ ...dated, ...holdingFrom(dated, since) });

  it("for all rows: none stood before, and a day chosen again brings back what did", () => {
    const all = from(undefined);
    expect(earlierBands(all)).toEqual([]);
    expect(ecOf({ ...all, ...holdingFrom(all, 46_100) })).toEqual(ecOf(dated));
  });

  it("from a day before the last change: that change is passed over", () => {
    expect(ecOf(from(46_090))).toEqual([[1.2, 3.5, 46_090]]);
  });

  it("changed again later, sets that held on no day are forgotten", () => {
    const next = changed(from(46_090), limits("2", "7"), 46_110);
    expect(next.earlier.map(({ since }) => since)).toEqual([undefined, 46_090]);
    const afterAll = changed(from(undefined), limits("2", "7"), 46_110);
    expect(ecOf(afterAll)).toEqual([[2, 6, 46_110]]);
  });

  it("own limits of an earlier version, which have no day, can be given one: the medium's stood before", () => {
    const kept: PotChoices = { ...inCoir, own: limits("1", "5") };
    expect([canBeDated(kept), canBeDated(inCoir), canBeDated({ ...kept, medium: undefined })]).toEqual([true, false, false]);
    expect(ecOf({ ...kept, ...holdingFrom(kept, 46_093) })).toEqual([[1.2, 3.5, 46_093]]);
  });
});
