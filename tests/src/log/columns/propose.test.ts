import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

interface Said { readonly is: string; readonly why: string | undefined }

/** What one column is, beside a date and a runoff pH, and why. */
function readAs(header: string, figure: number): Said {
  const { columns, questions } = readLog({ cells: [["Date", header, "Runoff pH"], ["2025-05-01", figure, 6], ["2025-05-02", figure, 6.1]] });
  const asked = questions.find((question) => question.columns.includes(1));
  const choices = asked?.choices.filter((choice) => choice !== "other").join(" or ");
  return { is: asked === undefined ? String(columns[1]?.quantity) : `asks ${choices ?? ""}`, why: columns[1]?.why };
}

// What a person would say of a column by its words, and why. Common practice, no source.
describe("the words over a column", () => {
  it.each([
    ["Target EC", "not a reading of the log"], ["Leaf temp", "measured in the plant or outdoors"], ["Press water EC", "another method than the runoff"],
    ["EC raw runoff", "not corrected to 25 C: make it EC at 25 C first"], ["Tap water EC", "the water before any feed is in it"],
    ["Tank top up L", "added to the tank, not to the pot"], ["Tank level L", "how full the tank is"], ["EC / pH runoff", "names EC and pH in one column"],
    ["Soil humidity %", "moisture of the medium"], ["Substrate temp C", "temperature of the medium"], ["Substrate", "the medium is chosen beside the log"],
    ["Variety", "a kind or a place"], ["Operator", "not a column of the log"], ["Runoff pH (mV)", "not a reading of the log"], ["Nutrient A ml/L", "not a reading of the log"],
    ["Runoff pH mS/cm", "its unit is not one of pH"], ["Runoff %", "not a reading of the log"], ["Feed xyz", "not a reading of the log"],
    ["Humidity L", "its unit is not one of humidity"], ["Extract volume L", "another method than the runoff"],
  ])("%s is not read: %s", (header, why) => {
    expect(readAs(header, 2)).toEqual({ is: "other", why });
  });

  it.each([
    ["EC", "input EC or runoff EC", "input or runoff is not said"], ["EC in/out", "input EC or runoff EC", "names both sides"],
    ["Slab extract EC", "runoff EC", "of an extract of the medium: as the runoff's it is held against the limits of that sample"],
    ["EC before", "input EC or runoff EC", "before or after something: which of them the pot got is not said"],
    ["Tank L", "input volume or runoff volume", "a tank's volume is not what was poured"],
    ["mL per plant", "input volume or runoff volume", "a volume of one plant or area is not the pot's"],
    ["Drip mL per plant", "input volume or runoff volume", "a volume of one plant or area is not the pot's"],
    ["EC in slab", "input EC or runoff EC", "input, or measured in the pot, is not said"], ["EC in pot", "input EC or runoff EC", "input, or measured in the pot, is not said"],
    ["Temp", "solution temperature or air temperature", "of the air or of the solution is not said"],
    ["Input", "input EC or input pH or input volume", "what was measured is not said"], ["Drain", "runoff EC or runoff pH or runoff volume", "what was measured is not said"],
  ])("%s is asked: %s, for %s", (header, choices, why) => {
    const said = readAs(header, 2);
    expect({ ...said, why: said.why?.split("; ")[0] }).toEqual({ is: `asks ${choices}`, why });
  });

  it.each([
    ["feedec", 1.6, "input EC"], ["ecdrain", 2.4, "runoff EC"], ["Drainmenge mL", 200, "runoff volume"], ["Feed EC", 1.6, "input EC"], ["Tank EC", 1.6, "input EC"], ["EC in", 1.6, "input EC"], ["Feed EC in slab", 1.6, "input EC"], ["Drain from slab EC", 2.4, "runoff EC"],
    ["Drain level L", 2, "runoff volume"], ["Feed temp C", 21, "solution temperature"], ["Tank temp C", 21, "solution temperature"], ["Drain temp C", 21, "solution temperature"],
    ["Room temp C", 21, "air temperature"], ["Feed L", 2, "input volume"], ["Leachate mL", 200, "runoff volume"], ["Humidity", 55, "humidity"],
    ["Plain water", 2, "asks input EC or input pH or input volume"], ["EC remarks", 2, "notes"], ["Target notes", 2, "notes"],
  ])("%s over %d is the %s", (header, figure, quantity) => {
    expect(readAs(header, figure).is).toBe(quantity);
  });
});
