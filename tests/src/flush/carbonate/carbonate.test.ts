import { describe, expect, it } from "vitest";
import {
  acidDose, acidNamed, type AcidName, alkaliDose, alkalinity, alkalinityAt, baseNamed, carbonateCharge, carbonateConstants, litres,
  milliequivalents, molesPerBottle, type Percent, ph, phInAir, protonsGiven, type Refusal, solutionCelsius, totalCarbonate,
} from "../../../../src/index";

const at25 = carbonateConstants();
const p = (constant: number): number => -Math.log10(constant);

describe("carbonateConstants", () => {
  // pK1, pK2 of pure water by other authors: Harned & Davis 1943 and Harned & Scholes 1941, quoted by Millero et al. 2006
  it.each([
    [0, 6.5781, 10.6289],
    [5, 6.5171, 10.5555],
    [10, 6.4645, 10.4893],
    [15, 6.4196, 10.4299],
    [20, 6.3821, 10.3768],
    [25, 6.3515, 10.3297],
    [30, 6.3273, 10.2882],
    [35, 6.3091, 10.252],
    [40, 6.2965, 10.2206],
  ])("at %d C pK1 is %d and pK2 %d within 0.002 (Harned and co-workers 1941 to 1943, another data set)", (celsius, pK1, pK2) => {
    const constants = carbonateConstants(solutionCelsius(celsius));
    expect(Math.abs(p(constants.first) - pK1)).toBeLessThan(0.002);
    expect(Math.abs(p(constants.second) - pK2)).toBeLessThan(0.002);
  });

  it("at 25 C pK1, pK2, pKw, pKH are 6.352, 10.329, 14.000, 1.468 (USGS phreeqc.dat)", () => {
    expect(p(at25.first)).toBeCloseTo(6.352, 3);
    expect(p(at25.second)).toBeCloseTo(10.329, 3);
    expect(p(at25.water)).toBeCloseTo(14.0, 2);
    expect(p(at25.henry)).toBeCloseTo(1.468, 3);
  });

  it.each([-1, 60, NaN])("refuses %d C", (celsius) => {
    expect(() => carbonateConstants(celsius as ReturnType<typeof solutionCelsius>)).toThrow(/0 to 50 C/);
  });
});

describe("dissolved carbonate", () => {
  it("carries half a charge where pH is pK1, and 1.5 where it is pK2", () => {
    expect(carbonateCharge(ph(6.352), at25)).toBeCloseTo(0.5, 3);
    expect(carbonateCharge(ph(10.329), at25)).toBeCloseTo(1.5, 3);
  });

  it("150 mg/L alkalinity at pH 7.5 is 2.997 meq/L and 3.205 mmol/L carbonate; at pH 5.8 0.701 meq/L is left (computed from the constants)", () => {
    const total = totalCarbonate(milliequivalents(alkalinity(150)), ph(7.5), at25);
    expect(milliequivalents(alkalinity(150))).toBeCloseTo(2.9974, 3);
    expect(total).toBeCloseTo(3.2052, 3);
    expect(alkalinityAt(total, ph(5.8), at25)).toBeCloseTo(0.7008, 3);
  });

  it.each([
    [7, 5.8, 0.732],
    [7, 6, 0.624],
    [7.5, 5.8, 0.766],
    [7.5, 6, 0.671],
    [8, 5.8, 0.777],
    [8, 6, 0.687],
  ])("from pH %d to %d acid takes %d of 3 meq/L alkalinity, not all of it (computed from the constants)", (now, target, share) => {
    const left = alkalinityAt(totalCarbonate(3, ph(now), at25), ph(target), at25);
    expect((3 - left) / 3).toBeCloseTo(share, 2);
  });

  it.each([
    [0.5, 7.892],
    [0.701, 8.037],
    [1, 8.19],
    [2, 8.485],
    [3, 8.655],
  ])("%d meq/L of alkalinity left open to air drifts to pH %d (computed at 420 ppm carbon dioxide)", (left, drifted) => {
    expect(phInAir(left, at25)).toBeCloseTo(drifted, 2);
  });
});

describe("acids", () => {
  it.each([
    ["phosphoric", 5, 1.0047],
    ["phosphoric", 5.8, 1.0375],
    ["phosphoric", 6.5, 1.164],
    ["phosphoric", 7, 1.383],
    ["citric monohydrate", 5, 1.66],
    ["citric monohydrate", 5.8, 2.12],
    ["citric anhydrous", 6.5, 2.547],
    ["sulfuric", 5.8, 2],
    ["nitric", 5.8, 1],
    ["hydrochloric", 5.8, 1],
  ] as const)("a mole of %s acid gives %d protons at that pH (from the pKa of phreeqc.dat; citric's from memory)", (name, at, protons) => {
    expect(protonsGiven(name, ph(at))).toBeCloseTo(protons, 2);
  });

  it.each([
    ["hydrochloric", 32, 10.17, "reprint of handbook table, 20 C"],
    ["hydrochloric", 36, 11.64, "reprint of handbook table, 20 C"],
    ["hydrochloric", 20, 6.02, "reprint of handbook table, 20 C"],
    ["sulfuric", 95, 17.82, "laboratory table, density 1.84"],
    ["phosphoric", 85, 14.615, "laboratory table, density 1.685"],
    ["phosphoric", 75, 12.085, "density 1.579"],
    ["nitric", 70, 15.7, "laboratory table, density 1.413"],
    ["nitric", 67, 14.886, "density 1.400"],
  ] as const)("%s acid of %d %% holds %d mol/L (%s)", (name, percent, moles, source) => {
    expect(molesPerBottle(name, percent as Percent) / moles, source).toBeCloseTo(1, 2);
  });

  it("between two tabulated strengths the density lies between: sulfuric 35 % at 1.26 holds 4.496 mol/L (computed from the density)", () => {
    expect(molesPerBottle("sulfuric", 35 as Percent)).toBeCloseTo(4.496, 2);
  });

  it.each([["sulfuric", 5], ["sulfuric", 99], ["phosphoric", 90], ["nitric", 90], ["hydrochloric", 40], ["nitric", NaN]] as const)(
    "refuses %s acid of %d %%: a guessed density is a guessed dose",
    (name, percent) => {
      expect(() => molesPerBottle(name, percent as Percent)).toThrow(/by mass; read it on the bottle/);
    },
  );

  it("knows other words, takes plain citric as anhydrous, and lists the known for a word it does not know", () => {
    expect([" Sulphuric acid", "muriatic", "citric"].map(acidNamed)).toEqual(["sulfuric", "hydrochloric", "citric anhydrous"]);
    expect(() => acidNamed("vinegar")).toThrow(/sulfuric, phosphoric, nitric, hydrochloric, citric/);
    expect(() => acidNamed("constructor")).toThrow(/choose/);
  });
});

const water = (phNow: number, mgPerLitre = 150, volume = 1000) => ({ litres: litres(volume), alkalinity: alkalinity(mgPerLitre), phNow: ph(phNow) });
const acid = (name: AcidName, percent: number) => ({ name, percent: percent as Percent });

describe("acidDose", () => {
  // 150 mg/L as CaCO3, pH 7.5 to 5.8 needs 2.2966 meq/L; by each acid's own density and protons
  it.each([
    ["sulfuric", 93, 66.0],
    ["sulfuric", 35, 255.4],
    ["nitric", 61.4, 171.3],
    ["phosphoric", 75, 183.2],
    ["phosphoric", 85, 151.5],
    ["hydrochloric", 32, 225.8],
    ["citric monohydrate", 100, 227.6],
  ] as const)("1000 L of it takes %s acid of %d %%: %d mL or g (computed from the constants)", (name, percent, expected) => {
    expect(acidDose(water(7.5), ph(5.8), acid(name, percent)).exact / expected).toBeCloseTo(1, 2);
  });

  it("sulfuric of 93 %: 1 US fl oz in 100 US gal neutralises 136.0 mg/L as CaCO3 (extension acid table)", () => {
    const litresPerOunce = 0.0295735;
    const equivalents = molesPerBottle("sulfuric", 93 as Percent) * protonsGiven("sulfuric", ph(5.8)) * litresPerOunce;
    expect((equivalents * 50043.5) / 378.541).toBeCloseTo(136.0, 0);
  });

  it("is rounded down to two figures, with the first 80 % of it and the cautions", () => {
    const dose = acidDose(water(7.5, 150, 100), ph(5.8), acid("phosphoric", 75));
    expect(dose.measured).toBe(18);
    expect(dose.measured).toBeLessThanOrEqual(dose.exact);
    const text = dose.reasons.join("; ");
    for (const says of ["first 80 %, 14 mL", "never water into acid", "goggles", "label and local code", "climbs back towards pH 8.0", "mg/L P"]) {
      expect(text).toContain(says);
    }
  });

  it("is 0 at the pH it already has", () => {
    const dose = acidDose(water(5.8), ph(5.8), acid("nitric", 60));
    expect(dose).toMatchObject({ exact: 0, measured: 0 });
    expect(dose.reasons.join("; ")).toContain("nothing to add");
  });

  it("half a litre of 150 mg/L with sulfuric 93 % wants 0.03299 mL, measured as 0.032: too little to measure well", () => {
    const dose = acidDose(water(7.5, 150, 0.5), ph(5.8), acid("sulfuric", 93));
    expect(dose.measured).toBe(0.032);
    expect(dose.reasons.join("; ")).toContain("too little to measure well: treat more water at once");
  });

  it.each([
    ["order", water(5.5), 6, "ALKALIDOSE raises it"],
    ["outside-validity", water(7.5), 4, "4.5 to 7.5"],
    ["outside-validity", water(9), 8, "4.5 to 7.5"],
    ["implausible", water(7.5, 1200), 5.8, "alkalinity 1200"],
    ["implausible", water(12), 5.8, "pH now 12"],
    ["impossible", water(10, 1), 5.8, "alkalinity 1"],
  ] as const)("refuses by %s", (code, treated, target, says) => {
    try {
      acidDose(treated, ph(target), acid("sulfuric", 93));
      expect.unreachable();
    } catch (problem) {
      expect(problem).toMatchObject({ code });
      expect((problem as Refusal).message).toContain(says);
    }
  });
});

describe("alkaliDose", () => {
  // alkalinity 0.2 meq/L at pH 5.0 to 6.0: 1.317 mmol/L KOH or 0.7785 mmol/L K2CO3, 107.6 mg/L
  it.each([
    ["potassium hydroxide", 1.317 * 56.106],
    ["potassium carbonate", 107.6],
  ] as const)("1000 L at pH 5 with 10 mg/L alkalinity takes %s: %d g to pH 6 (computed from the constants)", (name, grams) => {
    expect(alkaliDose(water(5, 10.0087), ph(6), { name }).exact / grams).toBeCloseTo(1, 2);
  });

  it.each([
    ["order", water(7), 6, "ACIDDOSE lowers it"],
    ["outside-validity", water(5), 8, "4.5 to 7.5"],
    ["outside-validity", water(5, 150), 7.5, "24 mmol/L"],
  ] as const)("refuses by %s", (code, treated, target, says) => {
    try {
      alkaliDose(treated, ph(target), { name: "potassium bicarbonate" });
      expect.unreachable();
    } catch (problem) {
      expect(problem).toMatchObject({ code });
      expect((problem as Refusal).message).toContain(says);
    }
  });

  it("lists the bases it knows", () => {
    expect(() => baseNamed("lime")).toThrow(/potassium bicarbonate, potassium carbonate, potassium hydroxide/);
  });
});
