import {
  acidDose,
  acidNamed,
  alkaliDose,
  alkalinity as alkalinityOf,
  baseNamed,
  litres as litresOf,
  ph,
  type Ph,
  type TreatedWater,
} from "../src/index";
import { whole } from "./answers";
import { type Cells, choice, flag, one, reading } from "./cells";
import { doseCells, needed, orBlank, percentStrength } from "./flush-cells";

/**
 * Acid that brings water to a lower pH: mL of the bottle, g of citric acid, rounded down. Acid into water, never the reverse; stir in 80 %, measure, finish.
 * @customfunction ACIDDOSE
 * @helpurl https://localhost:3000/docs/functions.html#aciddose
 * @param litres L of water to treat
 * @param alkalinity mg/L as CaCO3 (ALKUNIT brings others to it); 0 means not measured
 * @param ph_now pH of the same water, raw, before any feed
 * @param ph_target pH wanted, 4.5 to 7.5
 * @param acid sulfuric, phosphoric, nitric, hydrochloric or citric
 * @param percent_strength % by mass, from the bottle; for crystals their purity
 * @param [explain] TRUE adds the cautions in the cell to the right
 * @returns mL; g of citric acid
 * @remarks Goggles and acid-proof gloves. The label and local code win. No strength, no dose. Reckoned at 25 C without salts: at 15 C water takes 2 to 8 % more, salts make it 2 to 16 % less. Says where the acid brings more P, N, S or Cl than a feed should hold. Refuses a target above the pH now, and a strength outside its table.
 * @example =RUNOFF.ACIDDOSE(1000, 150, 7.5, 5.8, "sulfuric", 93) -> 65
 * @see [plummer-busenberg-1982] and the acids' own sources in docs/formulas.md
 */
export function aciddose(
  litres: any[][], alkalinity: any[][], ph_now: any[][], ph_target: any[][], acid: any[][], percent_strength: any[][],
  explain?: any[][],
): any[][] {
  return whole(() => {
    const explained = flag(explain, "explain", false);
    return orBlank(explained, () => {
      const { water, target } = treatment(litres, alkalinity, [ph_now, ph_target]);
      const name = needed(one(choice(acid, "acid", acidNamed)), "acid", "name it");
      const strength = one(reading(percent_strength, percentStrength, "percent strength"));
      const percent = needed(strength, "percent strength", "read it on the bottle; no strength, no dose");
      return doseCells(acidDose(water, target, { name, percent }), explained);
    });
  });
}

/**
 * Base that brings water to a higher pH: g of the pure substance, rounded down. Stir in 80 %, measure, finish.
 * @customfunction ALKALIDOSE
 * @helpurl https://localhost:3000/docs/functions.html#alkalidose
 * @param litres L of water to treat
 * @param alkalinity mg/L as CaCO3 (ALKUNIT brings others to it); 0 means not measured
 * @param ph_now pH of the same water, raw, before any feed
 * @param ph_target pH wanted, 4.5 to 7.5
 * @param base potassium bicarbonate, potassium carbonate or potassium hydroxide
 * @param [explain] TRUE adds the cautions in the cell to the right
 * @returns g
 * @remarks Goggles and gloves. The label and local code win. Reckoned at 25 C. Refuses a target below the pH now, and a step that needs more than 24 mmol/L of potassium.
 * @example =RUNOFF.ALKALIDOSE(1000, 10, 5, 6, "potassium hydroxide") -> 73
 * @see [plummer-busenberg-1982]
 */
export function alkalidose(
  litres: any[][], alkalinity: any[][], ph_now: any[][], ph_target: any[][], base: any[][], explain?: any[][],
): any[][] {
  return whole(() => {
    const explained = flag(explain, "explain", false);
    return orBlank(explained, () => {
      const { water, target } = treatment(litres, alkalinity, [ph_now, ph_target]);
      const name = needed(one(choice(base, "base", baseNamed)), "base", "name it");
      return doseCells(alkaliDose(water, target, { name }), explained);
    });
  });
}

function treatment(
  litresWater: Cells,
  waterAlkalinity: Cells,
  [phNow, phTarget]: [Cells, Cells],
): { water: TreatedWater; target: Ph } {
  const water = {
    litres: needed(one(reading(litresWater, litresOf, "volume of water")), "volume of water"),
    alkalinity: needed(
      one(reading(waterAlkalinity, alkalinityOf, "alkalinity")),
      "alkalinity",
      "measure it, or ask the water supplier",
    ),
    phNow: needed(one(reading(phNow, ph, "pH now")), "pH now"),
  };
  return { water, target: needed(one(reading(phTarget, ph, "target pH")), "target pH") };
}
