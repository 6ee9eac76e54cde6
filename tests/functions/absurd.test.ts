import { describe, expect, it } from "vitest";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
type Arg = CellValue | readonly CellValue[];
const asCells = (arg: Arg): Matrix => (Array.isArray(arg) ? (arg as CellValue[]).map((cell) => [cell]) : [[arg as CellValue]]);
const call = (id: string, ...args: readonly Arg[]): CellValue[] => host.call(id, args.map(asCells), "null")[0] ?? [];
const said = (id: string, ...args: readonly Arg[]): string => {
  const [answer] = call(id, ...args);
  return typeof answer === "object" ? (answer.reason ?? "") : `no error but ${String(answer)}`;
};

// Limits: common practice, no source.
describe("input that cannot be meant is asked about", () => {
  it.each<[string, string, readonly Arg[], string]>([
    ["a share for a percentage: 0.2 for 20 % N", "FEEDGRAMS", [100, 200, 0.2, "N"], "0.2 % would take 100 g in each litre"],
    ["a pot in mL", "FLUSHVOLUME", [10_000, 6, 3, 0.4, "coir"], "divide mL by 1000"],
    ["a pot in mL", "FLUSHPLAN", [10_000, 6, 3, 0.4, "coir"], "divide mL by 1000"],
    ["more concentrate than a quarter of the water", "STOCKDOSE", [20, 1.6, 0.4, 0.003], "a dose of 400 mL in each litre"],
    ["two mV in each other's place", "PHPROBE", [7, 160, 4.01, -15, 25], "look exchanged"],
    ["the mV of a slope asked for by itself", "PHPROBE", [7, 160, 4.01, -15, 25, "slope"], "look exchanged"],
    ["uS/cm beside limits in mS/cm", "DRIFTLEFT", [[1, 2, 3, 4, 5], [2100, 2200, 2300, 2400, 2500], 2, 3.5], "another unit"],
    ["another standard than the one read", "ECMETER", [12.88, 1.413, 25], "check the bottle and the unit"],
    ["a calibration every 14,000 days", "CALDUE", [45_000, 14_000, 45_010], "usual is 7 to 30, at most a year"],
    ["a leaching fraction in percent", "WATERING", [1.2, 20], "leaching fraction 20"],
  ])("%s: %s", (_, id, args, says) => {
    expect(said(id, ...args)).toContain(says);
  });

  it("FEEDGRAMS: traces stated at 1 % or less are taken, 2 ppm Fe of 0.1 % is 2 g/L", () => {
    expect(call("FEEDGRAMS", 100, 2, 0.1, "Fe")[0]).toBeCloseTo(200, 9);
  });

  it("FLUSHSTOP and FLUSHLEFT cannot say from running totals 2, 4, 6, and say so; portions of 2, 2.5, 2 are taken", () => {
    const [phs, ecs] = [[6, 6, 6, 6], [6, 5.2, 4.6, 4.1]];
    const totals = "the litres look like running totals (2, 4, 6): enter what was poured each time";
    expect(call("FLUSHSTOP", phs, ecs, "coir", [0, 2, 4, 6], 20, true)).toEqual(["cannot say", expect.stringContaining(totals)]);
    expect(call("FLUSHLEFT", [0, 2, 4, 6], ecs, 3, 0.4, true)).toEqual(["cannot say", expect.stringContaining(totals)]);
    expect(call("FLUSHSTOP", phs, ecs, "coir", [0, 2, 2.5, 2], 20)).toEqual(["keep going"]);
  });

  it("FLUSHSTOP cannot say from a portion of 2000 L beside a pot of 10 L", () => {
    const [answer, reason] = call("FLUSHSTOP", [6, 6], [6, 5], "coir", [0, 2000], 10, true);
    expect([answer, reason]).toEqual(["cannot say", expect.stringContaining("are these mL?")]);
  });
});

describe("names that every object inherits are unknown choices like any other", () => {
  const inherited = ["constructor", "__proto__", "toString", "hasOwnProperty", "valueOf"];
  it.each<[string, (name: string) => readonly Arg[]]>([
    ["LABELPPM", (name) => [1, 20, name]],
    ["FEEDGRAMS", (name) => [100, 200, 20, name]],
    ["ECUNIT", (name) => [1, name, "mS/cm"]],
    ["ECUNIT", (name) => [1, "mS/cm", name]],
    ["ALKUNIT", (name) => [1, name, "meq/L"]],
    ["PHBUFFER", (name) => [name, 20]],
    ["PHPROBE", (name) => [name, -15, 4.01, 160, 25]],
    ["PHPROBE", (name) => [7, -15, 4.01, 160, 25, name]],
    ["PPM", (name) => [2, name]],
    ["ACIDDOSE", (name) => [1000, 150, 7.5, 5.8, name, 60]],
    ["ALKALIDOSE", (name) => [1000, 10, 5, 6, name]],
  ])("%s", (id, args) => {
    for (const name of inherited) expect(said(id, ...args(name)), name).toMatch(/is not known: choose .+,.+/);
  });
});

describe("what an acid leaves in the water", () => {
  // 300 mg/L from pH 8 to 5.8 takes 4.66 meq/L: 4.49 mmol/L of phosphoric acid is 139 mg/L P (computed from the constants).
  it.each<[string, number, number, RegExp]>([
    ["phosphoric", 75, 300, /adds 139 mg\/L P, more than a whole feed should hold \(66\)/],
    ["phosphoric", 75, 100, /adds 46 mg\/L P: take it off the feed/],
    ["nitric", 60, 450, /adds 98 mg\/L N: take it off the feed/],
    ["sulfuric", 93, 450, /adds 112 mg\/L S(:|, more)/],
  ])("%s of %d %% in water of %d mg/L", (acid, percent, alkalinity, says) => {
    expect(call("ACIDDOSE", 1000, alkalinity, 8, 5.8, acid, percent, true)[1]).toMatch(says);
  });
});
