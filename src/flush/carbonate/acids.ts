import { type Percent, type Ph } from "../../quantities";
import { Refusal } from "../../refusal";
import { type Acid, type AcidName, acidTable } from "./acid-table";

/** The acids a dose can be asked for, in the words a sheet keeps. */
export const acids = ["sulfuric", "phosphoric", "nitric", "hydrochloric", "citric"] as const;

/** Other words for the same; plain "citric" is taken as anhydrous, the stronger kind, so that the dose errs to less. */
const words: Readonly<Record<string, AcidName>> = {
  sulfuric: "sulfuric",
  sulphuric: "sulfuric",
  phosphoric: "phosphoric",
  orthophosphoric: "phosphoric",
  nitric: "nitric",
  hydrochloric: "hydrochloric",
  muriatic: "hydrochloric",
  citric: "citric anhydrous",
  "citric anhydrous": "citric anhydrous",
  "citric monohydrate": "citric monohydrate",
};

/** The acid a word names. @throws {Refusal} `unknown-choice`, listing the acids */
export function acidNamed(text: string): AcidName {
  const word = text.trim().toLowerCase().replaceAll(/\s+/g, " ").replace(/ acid\b/, "");
  const found = Object.hasOwn(words, word) ? words[word] : undefined;
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "acid", given: text, allowed: acids.join(", ") });
}

/**
 * Protons that a mole of the acid gives up in water of a pH.
 *
 * Formula:  strong ones + mean charge from the pKas: sum of i b_i / sum of b_i, b_i = K1..Ki / H^i
 * Source:   [usgs-phreeqc]; citric from memory
 *
 * @example protonsGiven("phosphoric", ph(5.8)) // 1.0375
 */
export function protonsGiven(name: AcidName, ph: Ph): number {
  const { strongProtons, pKas }: Acid = acidTable[name];
  let share = 1;
  let shares = 1;
  let charges = 0;
  for (const [index, pKa] of pKas.entries()) {
    share *= 10 ** (ph - pKa);
    shares += share;
    charges += (index + 1) * share;
  }
  return strongProtons + charges / shares;
}

/**
 * Moles of acid in a litre of the bottle, by its strength; for a crystal, moles in a kilogram.
 *
 * Formula:  10 x percent x density / molar mass; density on a straight line between the tabulated strengths
 * Valid:    between the tabulated strengths; outside: refuses, for a density guessed is a dose guessed
 * Source:   src/flush/carbonate/acid-table.ts, a source per row
 *
 * @throws {Refusal} `outside-validity`
 * @example molesPerBottle("sulfuric", 93 as Percent) // 17.40
 */
export function molesPerBottle(name: AcidName, percent: Percent): number {
  const { molarMass, densities }: Acid = acidTable[name];
  return (gramsPerPercent * percent * (densities === undefined ? 1 : density(name, percent, densities))) / molarMass;
}

/** Grams in a kilogram for each percent. */
const gramsPerPercent = 10;

function density(name: AcidName, percent: Percent, rows: NonNullable<Acid["densities"]>): number {
  const above = rows.findIndex((row) => row.percent >= percent);
  const upper = rows[above];
  if (upper?.percent === percent) return upper.gramsPerMillilitre;
  const lower = rows[above - 1];
  if (upper !== undefined && lower !== undefined) {
    const part = (percent - lower.percent) / (upper.percent - lower.percent);
    return lower.gramsPerMillilitre + part * (upper.gramsPerMillilitre - lower.gramsPerMillilitre);
  }
  throw new Refusal("outside-validity", {
    quantity: `strength of ${name} acid`,
    given: percent,
    unit: "%",
    allowed: `${rows[0]?.percent ?? 0} to ${rows.at(-1)?.percent ?? 0} % by mass; read it on the bottle`,
  });
}
