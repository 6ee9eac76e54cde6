// The dose of an acid or a base in plain arithmetic: A litres, B alkalinity in mg/L as CaCO3, C pH now, D pH wanted, E the substance, F % by mass.

/** 25 C in kelvin. */
const kelvin = 298.15;

/** Plummer and Busenberg 1982: log10 K = a + b T + c / T + d log10 T + e / T^2. */
const constant = (a: number, b: number, c: number, d: number, e: number): string =>
  `10^(${a}+(${b})*${kelvin}+${c}/${kelvin}+${d}*LOG10(${kelvin})+(${e})/${kelvin}^2)`;
const first = constant(-356.3094, -0.06091964, 21834.37, 126.8339, -1684915);
const second = constant(-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9);
const water = constant(-283.971, -0.05069842, 13323, 102.24447, -1119669);

const hydrogen = (ph: string): string => `(10^(0-${ph}))`;
const bicarbonate = (ph: string): string => `(${first}/${hydrogen(ph)})`;
const carbonate = (ph: string): string => `(${first}*${second}/${hydrogen(ph)}^2)`;
/** Charge on a mole of dissolved carbonate, and hydrogen less hydroxide in meq/L. */
const charge = (ph: string): string => `((${bicarbonate(ph)}+2*${carbonate(ph)})/(1+${bicarbonate(ph)}+${carbonate(ph)}))`;
const free = (ph: string): string => `(1000*(${hydrogen(ph)}-${water}/${hydrogen(ph)}))`;

/** meq/L; a milliequivalent of CaCO3 weighs 100.087 / 2 mg. */
const alkalinity = "(B/(100.087/2))";
const dissolved = `((${alkalinity}+${free("C")})/${charge("C")})`;

/** Down to two figures, which can be measured out. */
const measured = (amount: string): string => `ROUNDDOWN(${amount},1-INT(LOG10(${amount})))`;

/** Protons a mole gives up at the target pH, by its pKa: sum of i b_i over sum of b_i. */
export function protons(...pKas: readonly number[]): string {
  const shares = pKas.map((_, at) => `10^(${at + 1}*D-${pKas.slice(0, at + 1).reduce((sum, pKa) => sum + pKa, 0)})`);
  return `((${shares.map((share, at) => `${at + 1}*${share}`).join("+")})/(1+${shares.join("+")}))`;
}

/** mL of a bottle of so many g/mL; of crystals, at 1 g/mL, their grams. */
export const acid = (molarMass: number, gramsPerMillilitre: number, given: string): string =>
  measured(`((${alkalinity}-${dissolved}*${charge("D")}+${free("D")})*A/${given}/(10*F*${gramsPerMillilitre}/${molarMass}))`);

/** g of a base that brings so much potassium and carbonate a mole. */
export const base = (molarMass: number, potassium: number, carbonates: number): string =>
  measured(`((${dissolved}*${charge("D")}-${free("D")}-${alkalinity})/(${potassium}-${carbonates}*${charge("D")})*A*${molarMass}/1000)`);
