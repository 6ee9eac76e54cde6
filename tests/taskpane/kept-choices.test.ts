import { expect, test } from "vitest";
import { noChoices, potChoices } from "../../taskpane/choices";
import { asChoices } from "../../taskpane/kept-choices";

test("answers that another version kept, or that name what every object inherits, are asked again and hang nothing", () => {
  const found = JSON.parse(`{
    "pots": { "constructor": { "medium": "constructor", "feeder": "toString", "own": { "phLow": 5 } }, "2": { "medium": "coir" }, "3": 7 },
    "columns": { "0": { "quantity": "__proto__" } }, "ppmScale": "500", "ecUnit": 1, "temperatureUnit": "K", "headerRow": 1.5
  }`) as unknown;
  const { pots, ...others } = asChoices(found);
  const { pots: none, ...unasked } = noChoices;
  expect(others).toEqual(unasked);
  expect([none, Object.keys(pots)]).toEqual([{}, ["2", "3", "constructor"]]);
  expect(Object.entries(pots).map(([pot, { medium, own }]) => [pot, medium, own])).toEqual([
    ["2", "coir", undefined], ["3", undefined, undefined], ["constructor", undefined, undefined],
  ]);
});

test.each([undefined, null, 7, "text", []])("%j is nothing kept", (found) => { expect(asChoices(found)).toEqual(noChoices); });

const own = { phLow: "5.5", phHigh: "6.5", ecLow: "1", ecHigh: "5" };

test("limits that an earlier version kept, one set without a day, hold for all rows as they did", () => {
  const choices = asChoices({ pots: { "": { medium: "coir", feeder: "heavy", own, container: "11" } } });
  expect(potChoices(choices, "Pepper 2")).toEqual({
    medium: "coir", feeder: "heavy", own, container: "11", since: undefined, typedAt: undefined, earlier: [],
  });
});

test("limits with their day, and those before them, are found again as they were kept", () => {
  const pot = { medium: "coir", feeder: "medium", own, container: "", since: 46_093, typedAt: 46_093, earlier: [{ own: { ...own, ecHigh: "4" }, since: 46_085 }] };
  expect(potChoices(asChoices(JSON.parse(JSON.stringify({ pots: { "": pot } }))), undefined)).toEqual(pot);
});

test("a day that is none, and a past that is none, are left out; the limits stay", () => {
  const bad = { medium: "coir", own, since: "yesterday", typedAt: 1.5, earlier: [7, { own: { phLow: 5 }, since: {} }] };
  expect(potChoices(asChoices({ pots: { "": bad } }), undefined)).toMatchObject({
    own, since: undefined, typedAt: undefined, earlier: [{ own: undefined, since: undefined }],
  });
});
