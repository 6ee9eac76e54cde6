/**
 * g/mol of the elements in the compounds that labels state. IUPAC 2021 standard atomic weights, conventional values
 * where nature varies [iupac-weights-2021].
 */
export const atomicWeights = {
  H: 1.008, N: 14.007, O: 15.999, Mg: 24.305, Si: 28.085, P: 30.9738, S: 32.06, K: 39.0983, Ca: 40.078,
} as const;

export type Element = keyof typeof atomicWeights;

/** A compound by its atoms: `{ P: 2, O: 5 }`. */
export type Formula = Readonly<Partial<Record<Element, number>>>;

export const molarMass = (formula: Formula): number =>
  Object.entries(formula).reduce((sum, [element, count]) => sum + atomicWeights[element as Element] * count, 0);
