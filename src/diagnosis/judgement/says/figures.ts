import { quantities } from "../../../quantities";

// How figures stand in advice: as many digits as a person can act on.

/** "4.6 mS/cm". */
export const ecText = (ec: number): string => `${Number(ec.toFixed(quantities.ec.decimals))} mS/cm`;
/** "EC 1.1": rounded to a tenth, to be mixed. */
export const feedText = (ec: number): string => `EC ${Number(ec.toFixed(1))}`;
/** "pH 5.8". */
export const phText = (ph: number): string => `pH ${Number(ph.toFixed(1))}`;
/** "1.4 L"; tenths are enough to pour by, hundredths below 1 L. */
export const litresText = (litres: number): string => `${Number(litres.toFixed(litres < 1 ? 2 : 1))} L`;
/** "25 %". */
export const percentText = (share: number): string => `${Math.round(100 * share)} %`;

const hoursADay = 24;

/** "22 hours", "1 day", "6 days": whole days once there is one. */
export function daysText(days: number): string {
  if (days < 1) return `${Math.round(days * hoursADay)} hours`;
  const whole = Math.floor(days);
  return whole === 1 ? "1 day" : `${whole} days`;
}
