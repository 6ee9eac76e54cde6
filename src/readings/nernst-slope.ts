import { type Celsius } from "../quantities";

/** CODATA 2018, exact: J per mol per K, and C per mol. */
const gasConstant = 8.314_462_618_153_24;
const faradayConstant = 96_485.332_123_31;
/** 0 C in K, by definition. */
const zeroCelsius = 273.15;
const millivoltsPerVolt = 1000;

/**
 * What a perfect pH electrode changes by for one pH, in mV.
 *
 * Formula:  slope = ln 10 R T / F
 * Source:   Nernst's equation; constants [codata-2018]
 *
 * @returns mV per pH; 59.16 at 25 C
 * @example nernstSlope(solutionCelsius(25)) // 59.159
 */
export const nernstSlope = (celsius: Celsius): number =>
  (Math.LN10 * gasConstant * (celsius + zeroCelsius) * millivoltsPerVolt) / faradayConstant;
