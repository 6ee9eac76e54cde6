import { MF } from "mf-parser";
import { describe, expect, it } from "vitest";
import { type Analyte, elementShare } from "../../../src/index";

const atoms = {
  P2O5: "P2", K2O: "K2", CaO: "Ca", MgO: "Mg", SO3: "S", SO4: "S", NO3: "N", NH4: "N", SiO2: "Si",
} as const;

/** mf-parser carries weights of its own, which differ from the conventional ones by up to 0.01 %. */
describe("elementShare against mf-parser's molar masses", () => {
  it.each(Object.entries(atoms) as [keyof typeof atoms, string][])("%s within 0.02 %%", (analyte, part) => {
    const share = new MF(part).getInfo().mass / new MF(analyte).getInfo().mass;
    expect(Math.abs(elementShare(analyte) / share - 1)).toBeLessThan(0.0002);
  });

  it("an element is all of itself", () => {
    expect(["N", "P", "K", "Ca", "Mg", "S", "Fe"].map((each) => elementShare(each as Analyte))).toEqual([1, 1, 1, 1, 1, 1, 1]);
  });
});
