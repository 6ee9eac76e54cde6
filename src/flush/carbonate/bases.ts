import { Refusal } from "../../refusal";

/** Per mole: what the base brings of charge (potassium) and of carbonate. Molar masses: [iupac-weights-2021]. */
export const baseTable = {
  "potassium bicarbonate": {
    molarMass: 100.114,
    potassium: 1,
    carbonate: 1,
    caution: "potassium bicarbonate is mild; its dust stings eyes",
  },
  "potassium carbonate": {
    molarMass: 138.204,
    potassium: 2,
    carbonate: 1,
    caution: "potassium carbonate irritates skin and burns eyes",
  },
  "potassium hydroxide": {
    molarMass: 56.105,
    potassium: 1,
    carbonate: 0,
    caution: "potassium hydroxide burns skin and eyes and gets hot in water",
  },
} as const;

export type BaseName = keyof typeof baseTable;

/** The base a word names. @throws {Refusal} `unknown-choice`, listing the bases */
export function baseNamed(text: string): BaseName {
  const word = text.trim().toLowerCase().replaceAll(/\s+/g, " ");
  const names = Object.keys(baseTable) as BaseName[];
  const found = names.find((name) => name === word);
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "base", given: text, allowed: names.join(", ") });
}
