import { describe, expect, it } from "vitest";
import {
  acidDose, acidNamed, type AcidName, alkaliDose, alkalinity, baseNamed, carbonateConstants, litres, molesPerBottle, type Percent, ph,
  protonsGiven, solutionCelsius,
} from "../../../../src/index";
import { type Acid, acidTable } from "../../../../src/flush/carbonate/acid-table";
import { measurable } from "../../../../src/flush/carbonate/dose";
import { expectRefusal } from "../../refused";

const water = (phNow: number, mgPerLitre = 150, volume = 1000) => ({ litres: litres(volume), alkalinity: alkalinity(mgPerLitre), phNow: ph(phNow) });
const acid = (name: AcidName, percent: number) => ({ name, percent: percent as Percent });
const said = (name: AcidName, percent: number, mgPerLitre = 150): string =>
  acidDose(water(7.5, mgPerLitre), ph(5.8), acid(name, percent)).reasons.join("; ");

describe("the densities of acids", () => {
  const liquids = Object.entries(acidTable as Record<string, Acid>).flatMap(([name, { densities }]) => (densities === undefined ? [] : [[name, densities] as const]));

  it.each(liquids)("%s: they rise with its strength, from water's 0.998 to below 2, and no row is off the line of its neighbours by 2 %%", (_, densities) => {
    const rows = [{ percent: 0, gramsPerMillilitre: 0.998 }, ...densities];
    rows.slice(1).forEach(({ percent, gramsPerMillilitre }, at) => {
      const [before, after] = [rows[at], rows[at + 2]];
      expect(percent).toBeGreaterThan(before?.percent ?? NaN);
      expect(percent).toBeLessThan(after?.percent ?? 100);
      expect(gramsPerMillilitre).toBeGreaterThan(before?.gramsPerMillilitre ?? NaN);
      expect(gramsPerMillilitre).toBeLessThan(2);
      if (before === undefined || after === undefined) return;
      const part = (percent - before.percent) / (after.percent - before.percent);
      const between = before.gramsPerMillilitre + part * (after.gramsPerMillilitre - before.gramsPerMillilitre);
      expect(Math.abs(gramsPerMillilitre / between - 1)).toBeLessThan(0.02);
    });
  });

  it("the strengths at both ends are known, beyond them nothing is", () => {
    expect(molesPerBottle("sulfuric", 10 as Percent)).toBeCloseTo((10 * 10 * 1.0661) / 98.078, 9);
    expect(molesPerBottle("hydrochloric", 38 as Percent)).toBeCloseTo((10 * 38 * 1.189) / 36.458, 9);
    expectRefusal(() => molesPerBottle("phosphoric", 86 as Percent), "outside-validity", "strength of phosphoric acid 86 % is outside what this formula holds for: it holds for 10 to 85 % by mass");
  });

  // Molar masses of citric acid C6H8O7 and of its monohydrate, which holds a molecule of water, 18.015, more [iupac-weights-2021].
  it("a kilogram of citric crystals holds 1000 / 192.123 mol, of the monohydrate 1000 / 210.138", () => {
    expect(molesPerBottle("citric anhydrous", 100 as Percent)).toBeCloseTo(5.205, 3);
    expect(molesPerBottle("citric monohydrate", 100 as Percent)).toBeCloseTo(4.7588, 3);
  });
});

// pKas of phreeqc.dat: where the pH is a pKa, half of that proton is given up; the third of phosphoric acid is 12.35, the second of sulfuric 1.99.
describe("protonsGiven where the pH is a pKa", () => {
  it.each([["phosphoric", 12.346, 2.5], ["phosphoric", 7.207, 1.5], ["sulfuric", 1.988, 1.5], ["citric anhydrous", 4.761, 1.5]] as const)(
    "%s acid at pH %d: %d",
    (name, at, protons) => {
      expect(Math.abs(protonsGiven(name, ph(at)) - protons)).toBeLessThan(0.025);
    },
  );
});

describe("acidNamed and baseNamed", () => {
  it.each([
    ["sulfuric", "sulfuric"], ["Sulphuric  acid", "sulfuric"], ["phosphoric", "phosphoric"], ["orthophosphoric acid", "phosphoric"],
    ["nitric acid", "nitric"], ["hydrochloric", "hydrochloric"], ["muriatic acid", "hydrochloric"], ["citric acid", "citric anhydrous"],
    ["citric anhydrous", "citric anhydrous"], ["citric acid monohydrate", "citric monohydrate"],
  ])("%s is %s", (text, name) => {
    expect(acidNamed(text)).toBe(name);
  });

  it("what is none is refused by what was asked for", () => {
    expectRefusal(() => acidNamed("vinegar"), "unknown-choice", 'acid "vinegar" is not known: choose sulfuric, phosphoric, nitric, hydrochloric, citric');
    expectRefusal(() => baseNamed("lime"), "unknown-choice", 'base "lime" is not known');
    expect(baseNamed(" Potassium  Carbonate ")).toBe("potassium carbonate");
  });
});

describe("acidDose: what it says", () => {
  // 150 mg/L from pH 7.5 to 5.8 is 2.2966 meq/L: 36.8 mg/L S, 68.6 P, 32.2 N, 81.4 Cl by the acids' protons and the elements' weights.
  it.each([["sulfuric", 93, "adds 37 mg/L S: take"], ["phosphoric", 75, "adds 69 mg/L P, more"], ["nitric", 60, "adds 32 mg/L N: take"], ["hydrochloric", 32, "adds 81 mg/L Cl: take"]] as const)(
    "%s acid leaves its element: of %d %%, %s",
    (name, percent, words) => {
      expect(said(name, percent)).toContain(words);
    },
  );

  it.each([
    ["sulfuric", 93, 450, "adds 110 mg/L S: take it off the feed", 470, "adds 115 mg/L S, more than a whole feed should hold (112)"],
    ["phosphoric", 75, 140, "adds 64 mg/L P: take it off the feed", 150, "P, more than a whole feed should hold (66)"],
    ["hydrochloric", 32, 250, "adds 136 mg/L Cl: take it off the feed", 270, "Cl, more than a whole feed should hold (140)"],
  ] as const)("%s acid of %d %%: at %d mg/L it %s, at %d more than a feed holds", (name, percent, low, takes, high, warns) => {
    expect(said(name, percent, low)).toContain(takes);
    expect(said(name, percent, high)).toContain(warns);
  });

  it("only plain citric is said to be reckoned as anhydrous, and it leaves nothing behind", () => {
    expect(said("citric anhydrous", 100)).toContain("the monohydrate needs a tenth more");
    for (const name of ["citric monohydrate", "nitric"] as const) expect(said(name, name === "nitric" ? 60 : 100)).not.toContain("monohydrate");
    expect(said("citric anhydrous", 100)).not.toContain("mg/L");
  });

  it("crystals are weighed, liquids measured; the equivalents have two decimals, the drift in air one", () => {
    expect(acidDose(water(7.5), ph(5.8), acid("citric anhydrous", 100)).unit).toBe("g");
    expect(acidDose(water(7.5), ph(5.8), acid("nitric", 60)).unit).toBe("mL");
    expect(said("nitric", 60)).toContain("neutralises 2.30 of 3.00 meq/L alkalinity: pH 7.5 to 5.8");
    expect(said("nitric", 60)).toContain("climbs back towards pH 8.0:");
  });

  it("how much less the salts of the water let do: 2 to 9 % of a strong acid, 3 to 15 % of phosphoric, 9 to 16 % of citric", () => {
    for (const [name, percent] of [["sulfuric", 93], ["nitric", 60], ["hydrochloric", 32]] as const) expect(said(name, percent)).toContain("2 to 9 % less");
    expect(said("phosphoric", 75)).toContain("3 to 15 % less");
    expect(said("citric anhydrous", 100)).toContain("9 to 16 % less");
  });

  it("cold water takes more: at 5 C than at 25 C, which stands unless given", () => {
    const at = (celsius?: number) => acidDose(water(7.5), ph(5.8), { ...acid("nitric", 60), ...(celsius === undefined ? {} : { celsius: solutionCelsius(celsius) }) }).exact;
    expect(at()).toBe(at(25));
    expect(at(5)).toBeGreaterThan(at());
  });
});

describe("a dose at its limits", () => {
  it("rounds down to two figures, but for what the machine writes short of a figure", () => {
    expect([0, -1, 79.999_999_999, 18.32, 0.032_99, 999, 1000, 0.1].map(measurable)).toEqual([0, 0, 80, 18, 0.032, 990, 1000, 0.1]);
  });

  it("pH 4.5 and 7.5 can be asked for", () => {
    expect(acidDose(water(8), ph(7.5), acid("nitric", 60)).exact).toBeGreaterThan(0);
    expect(acidDose(water(7.5), ph(4.5), acid("nitric", 60)).exact).toBeGreaterThan(0);
    expectRefusal(() => acidDose(water(8), ph(7.51), acid("nitric", 60)), "outside-validity", "target pH 7.51 is outside");
    expectRefusal(() => alkaliDose(water(4.4), ph(4.49), { name: "potassium hydroxide" }), "outside-validity", "4.5 to 7.5");
  });

  it("a target half a step of the meter beyond the pH now is that pH", () => {
    expect(acidDose(water(5.8), ph(5.804), acid("nitric", 60)).exact).toBe(0);
    expectRefusal(() => acidDose(water(5.8), ph(5.806), acid("nitric", 60)), "order", "target pH 5.806 is out of order: it must be below the pH now, 5.8; ALKALIDOSE");
    expect(alkaliDose(water(5.8, 10), ph(5.796), { name: "potassium hydroxide" }).exact).toBe(0);
    expectRefusal(() => alkaliDose(water(5.8, 10), ph(5.794), { name: "potassium hydroxide" }), "order", "above the pH now, 5.8; ACIDDOSE");
  });

  it("500 mg/L is believed, 501 is not; soft water of 1 mg/L is water too", () => {
    expect(acidDose(water(7.5, 500), ph(5.8), acid("nitric", 60)).exact).toBeGreaterThan(0);
    expectRefusal(() => acidDose(water(7.5, 501), ph(5.8), acid("nitric", 60)), "implausible", "alkalinity 501 mg/L as CaCO3 is hard to believe: usual is 5 to 500");
    expectRefusal(() => acidDose(water(10.1), ph(5.8), acid("nitric", 60)), "implausible", "pH now 10.1 is hard to believe: usual is 3 to 10");
    expect(acidDose(water(7, 1), ph(5.8), acid("nitric", 60)).exact).toBeGreaterThan(0);
  });

  it("a tenth of a mL can be measured, less cannot; nothing to add is not too little", () => {
    const little = "too little to measure well";
    const of = (volume: number, target = 5.8) => acidDose(water(7.5, 150, volume), ph(target), acid("sulfuric", 93));
    expect([of(1.55).measured, of(1.55).reasons.join("; ").includes(little)]).toEqual([0.1, false]);
    expect([of(1.5).measured, of(1.5).reasons.join("; ").includes(little)]).toEqual([0.098, true]);
    expect(of(1.5, 7.5).reasons.join("; ")).not.toContain(little);
  });

  it("carbonate constants hold at 0 and at 50 C", () => {
    for (const celsius of [0, 50]) expect(carbonateConstants(solutionCelsius(celsius)).first).toBeGreaterThan(0);
    expectRefusal(() => carbonateConstants(solutionCelsius(50.1)), "outside-validity", "solution temperature 50.1 C is outside");
  });

  it("an alkalinity too low for its pH is refused in mg/L", () => {
    expectRefusal(() => acidDose(water(9.9, 3), ph(5.8), acid("nitric", 60)), "impossible", "alkalinity 3 mg/L as CaCO3 cannot be: it must be higher in water of pH 9.9");
  });
});

describe("alkaliDose: what it says", () => {
  // 1.317 mmol/L of KOH to pH 6 is 51.5 mg/L of potassium, 39.098 g/mol.
  it("the millimoles, the potassium they bring, and g", () => {
    const { reasons, unit } = alkaliDose(water(5, 10.0087), ph(6), { name: "potassium hydroxide" });
    expect(unit).toBe("g");
    expect(reasons.join("; ")).toContain("1.32 mmol/L of potassium hydroxide: pH 5 to 6");
    expect(reasons.join("; ")).toMatch(/adds 5[12] mg\/L K/);
    const { exact, reasons: ofCarbonate } = alkaliDose(water(5, 10.0087, 500), ph(6), { name: "potassium carbonate" });
    expect(exact).toBeCloseTo(107.6 / 2, 0);
    expect(ofCarbonate.join("; ")).toContain("adds 61 mg/L K");
  });

  it("bicarbonate, of which most turns to carbon dioxide, takes more of the base than hydroxide, and carbonate less", () => {
    const moles = (name: "potassium bicarbonate" | "potassium carbonate" | "potassium hydroxide", mass: number) => alkaliDose(water(5, 10.0087), ph(6), { name }).exact / mass;
    expect(moles("potassium bicarbonate", 100.114)).toBeGreaterThan(moles("potassium hydroxide", 56.105));
    expect(moles("potassium carbonate", 138.204)).toBeLessThan(moles("potassium hydroxide", 56.105));
  });

  it("is measured out in g, more of it in colder water", () => {
    const dose = (celsius?: number) => alkaliDose(water(5, 10.0087), ph(6), { name: "potassium carbonate", ...(celsius === undefined ? {} : { celsius: solutionCelsius(celsius) }) });
    expect(dose().reasons.join("; ")).toContain("measure out 100 g (rounded down)");
    expect(dose().exact).toBe(dose(25).exact);
    expect(dose(5).exact).toBeGreaterThan(dose().exact);
  });

  // 1 meq/L at pH 5 is 23.7 mmol/L of carbonate; at pH 7 its charge is 0.816: (19.35 - 1) / (2 - 0.816) is 15.5 mmol/L, two potassium each.
  it("more potassium than the strongest drench is refused, with how much", () => {
    expectRefusal(() => alkaliDose(water(5, 50.0435), ph(7), { name: "potassium carbonate" }), "outside-validity", "potassium carbonate for this step 31 mmol/L of potassium is outside");
    expectRefusal(() => alkaliDose(water(5, 150), ph(7.5), { name: "potassium bicarbonate" }), "outside-validity", "mmol/L of potassium is outside");
  });
});
