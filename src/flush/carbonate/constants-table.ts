/** log10 K = a + b T + c / T + d log10 T + e / T^2, T in kelvin. */
export type Coefficients = readonly [a: number, b: number, c: number, d: number, e: number];

/**
 * Carbonate: Plummer and Busenberg 1982; water: Nordstrom et al. 1990; all as in the USGS file phreeqc.dat.
 * [plummer-busenberg-1982] [nordstrom-1990]
 */
export const coefficients = {
  /** CO2 in water = H + HCO3 */
  first: [-356.3094, -0.06091964, 21834.37, 126.8339, -1684915.0],
  /** HCO3 = H + CO3 */
  second: [-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9],
  /** CO2 in air = CO2 in water, mol/L per atm */
  henry: [108.3865, 0.01985076, -6919.53, -40.45154, 669365.0],
  /** H2O = H + OH [nordstrom-1990] */
  water: [-283.971, -0.05069842, 13323.0, 102.24447, -1119669.0],
} as const satisfies Record<string, Coefficients>;
