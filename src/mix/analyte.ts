import { Refusal } from "../refusal";
import { atomicWeights, type Element, type Formula, molarMass } from "./atomic-weights";

/** The oxides and ions in which labels state an element. */
const compounds = {
  P2O5: { element: "P", atoms: { P: 2, O: 5 } },
  K2O: { element: "K", atoms: { K: 2, O: 1 } },
  CaO: { element: "Ca", atoms: { Ca: 1, O: 1 } },
  MgO: { element: "Mg", atoms: { Mg: 1, O: 1 } },
  SO3: { element: "S", atoms: { S: 1, O: 3 } },
  SO4: { element: "S", atoms: { S: 1, O: 4 } },
  NO3: { element: "N", atoms: { N: 1, O: 3 } },
  NH4: { element: "N", atoms: { N: 1, H: 4 } },
  SiO2: { element: "Si", atoms: { Si: 1, O: 2 } },
} as const satisfies Record<string, { element: Element; atoms: Formula }>;

/** The elements labels state as such. */
const elements = ["N", "P", "K", "Ca", "Mg", "S", "Fe", "Mn", "Zn", "Cu", "B", "Mo", "Si", "Cl", "Na"] as const;

/** What a label's percentage counts. */
export type Analyte = (typeof elements)[number] | keyof typeof compounds;

const analytes: readonly Analyte[] = [...elements, ...(Object.keys(compounds) as (keyof typeof compounds)[])];

/** Nitrogen stated by its form is still counted as N: "nitrate nitrogen". */
const forms: ReadonlyMap<string, Analyte> = new Map([["no3-n", "N"], ["n-no3", "N"], ["nh4-n", "N"], ["n-nh4", "N"]]);

/**
 * The analyte a text names; small figures and case do not matter.
 *
 * @throws {Refusal} `unknown-choice`, listing the analytes
 * @example analyteNamed("p2o5") // "P2O5"
 */
export function analyteNamed(text: string): Analyte {
  const word = text.normalize("NFKC").trim().toLowerCase();
  const found = analytes.find((analyte) => analyte.toLowerCase() === word) ?? forms.get(word);
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "analyte", given: text, allowed: analytes.join(", ") });
}

/**
 * Grams of the element in one gram of the analyte, 0 to 1.
 *
 * Formula:  share = atoms of the element x its weight / weight of the compound
 * Source:   [iupac-weights-2021]
 *
 * @example elementShare("P2O5") // 0.4364
 */
export function elementShare(analyte: Analyte): number {
  if (!isCompound(analyte)) return 1;
  const { element, atoms }: { element: Element; atoms: Formula } = compounds[analyte];
  return ((atoms[element] ?? 0) * atomicWeights[element]) / molarMass(atoms);
}

const isCompound = (analyte: Analyte): analyte is keyof typeof compounds => Object.hasOwn(compounds, analyte);
