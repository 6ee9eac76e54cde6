import { expect, test } from "vitest";
import { noChoices } from "../../taskpane/choices";
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
