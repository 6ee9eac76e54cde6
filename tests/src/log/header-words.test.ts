import { describe, expect, it } from "vitest";
import { readLog } from "../../../src/index";

/** What one header over figures near `sample` is read as; a question is shown by its kind. */
function readAs(header: string, sample: unknown = 1.8): string {
  const reading = readLog({ cells: [["Date", header, "Humidity %", "Drained L"], ["2024-04-01", sample, 55, 0.2], ["2024-04-02", sample, 56, 0.2]] });
  const column = reading.columns[1];
  const asked = reading.questions.find(({ columns }) => columns.includes(1));
  if (asked !== undefined) return `asks ${asked.kind}`;
  return column === undefined ? "nothing" : `${column.quantity} ${String(column.unit)}`.trim();
}

// Words as growers write them; the reading is what a person would say. Common practice, no source.
describe("words over a column", () => {
  it.each([
    ["EC in", "input EC mS/cm"],
    ["ECin", "input EC mS/cm"],
    ["EC_in", "input EC mS/cm"],
    ["in EC", "input EC mS/cm"],
    ["inputEC", "input EC mS/cm"],
    ["EC (feed)", "input EC mS/cm"],
    ["Nutrient solution EC [mS cm-1]", "input EC mS/cm"],
    ["E.C. of feed (dS/m)", "input EC dS/m"],
    ["Reservoir conductivity", "input EC mS/cm"],
    ["Leitfähigkeit Zulauf mS/cm", "input EC mS/cm"],
    ["Irrigation EC @ 25°C", "input EC mS/cm"],
  ])("%s is the input's EC", (header, expected) => {
    expect(readAs(header)).toBe(expected);
  });

  it.each([
    ["pH in", "input pH"],
    ["pHin", "input pH"],
    ["PH IN", "input pH"],
    ["ph_input", "input pH"],
    ["Feed pH (25 °C)", "input pH"],
    ["Run-off pH", "runoff pH"],
    ["run off PH", "runoff pH"],
    ["RunoffPh", "runoff pH"],
    ["Leachate pH", "runoff pH"],
    ["pH out", "runoff pH"],
    ["pH Drainwasser", "runoff pH"],
    ["Pour-through pH", "runoff pH"],
    ["Soil runoff pH", "runoff pH"],
    ["Drained water pH", "runoff pH"],
  ])("%s is %s", (header, expected) => {
    expect(readAs(header, 6.1)).toBe(expected);
  });

  it.each([
    ["Runoff (mL)", 200, "runoff volume mL"],
    ["Runoff Volume, L", 0.4, "runoff volume L"],
    ["Water given [l]", 2, "input volume L"],
    ["Total water (gal)", 2, "input volume gal"],
    ["Collected mL", 200, "runoff volume mL"],
    ["Feed temp (°F)", 68, "solution temperature F"],
    ["Water Temperature", 21, "solution temperature C"],
    ["Air T (°C)", 24, "air temperature C"],
    ["Room temp", 75, "air temperature F"],
    ["Temp", 24, "air temperature C"],
  ] as const)("%s over figures like %s is the %s", (header, sample, expected) => {
    expect(readAs(header, sample)).toBe(expected);
  });

  it.each([
    ["EC in mS/cm", "what is this column"],
    ["EC", "what is this column"],
    ["pH", "what is this column"],
    ["EC of pot", "what is this column"],
    ["Substrate EC", "what is this column"],
    ["Reservoir volume (gal)", "what is this column"],
    ["Tank L", "what is this column"],
    ["EC in/out", "what is this column"],
    ["Input", "what is this column"],
    ["Conductivity 1", "what is this column"],
  ])("%s leaves open what it holds", (header, kind) => {
    expect(readAs(header)).toBe(`asks ${kind}`);
  });

  it.each([
    ["Feed ppm", 900, "ppm scale"],
    ["TDS in", 900, "ppm scale"],
    ["Runoff TDS mg/L", 900, "ppm scale"],
    ["EC in", 1800, "EC unit"],
    ["EC in", 50, "EC unit"],
    ["Water volume", 500, "volume unit"],
    ["Water temp", 45, "temperature unit"],
    ["Water temp °C", 70, "temperature unit"],
  ] as const)("%s over figures like %s asks for the %s", (header, sample, kind) => {
    expect(readAs(header, sample)).toBe(`asks ${kind}`);
  });

  it.each([
    "Runoff %", "Leaching fraction", "Target EC", "EC ratio runoff/in", "pH diff", "pH down (mL)", "Calcium (ppm)", "N ppm", "Nutrient A (mL/L)", "Base (mL)",
    "Feed pH (mV)", "Leaf temp", "VPD", "Plant height", "PPFD", "Lux", "Soil moisture %", "Weight g", "EC raw runoff", "Root zone temp °C", "Dew point °C",
    "Flow L/h", "Tap water EC", "RO water pH", "Source EC", "Calibration pH", "Week", "Water level cm", "Plant age", "EC / pH runoff", "Dissolved oxygen mg/L", "constructor", "__proto__",
  ])("%s is not read", (header) => {
    expect(readAs(header)).toBe("other");
  });
});
