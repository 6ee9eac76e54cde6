/** C of the rows of the table below. */
export const kclCelsius = [0, 5, 10, 15, 18, 20, 25, 30, 35, 40, 45, 50] as const;

/**
 * Conductivity of KCl solutions of 0.01 and 0.1 mol/kg at the temperatures above, uS/cm, and at 25 C. NIST, ITS-90
 * [pratt2001].
 */
export const kclStandards = [
  {
    at25: 1408.23,
    conductivity: [
      772.92, 890.96, 1013.95, 1141.45, 1219.93, 1273.03, 1408.23, 1546.63, 1687.79, 1831.27, 1976.62, 2123.43,
    ],
  },
  {
    at25: 12_824.6,
    conductivity: [
      7116.85, 8183.7, 9291.72, 10_437.1, 11_140.6, 11_615.9, 12_824.6, 14_059.2, 15_316, 16_591, 17_880.6, 19_180.9,
    ],
  },
] as const;
