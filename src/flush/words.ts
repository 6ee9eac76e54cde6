import { quantities } from "../quantities";

// How readings are written in reasons: as many decimals as the meter shows, always a point, always the unit.

/** "3.50 mS/cm". */
export const inMillisiemens = (ec: number): string => `${ec.toFixed(quantities.ec.decimals)} mS/cm`;

/** "6.20". */
export const inPh = (ph: number): string => ph.toFixed(quantities.ph.decimals);

/** "19.5 L": hundredths at most, no idle zeros. */
export const inLitres = (litres: number): string => `${Number(litres.toFixed(quantities.litres.decimals))} L`;
