import * as engine from "../src/index";
import { eachCell } from "./answers";
import { reading } from "./cells";

/**
 * Vapour pressure deficit: how hard the air pulls water out of a leaf. Below 0, dew settles on the leaf.
 * @customfunction VPD
 * @helpurl https://localhost:3000/docs/functions.html#vpd
 * @param air_c C of the air, cell or range
 * @param humidity_percent % relative humidity, cell or range
 * @param [leaf_c] C of the leaf, as warm as the air if left out, cell or range
 * @returns kPa
 * @remarks Refuses outside 0 to 50 C, and a humidity typed as a share (0.6 for 60).
 * @example =RUNOFF.VPD(25, 60) -> 1.267
 * @example =RUNOFF.VPD(25, 60, 23) -> 0.909
 * @see [fao-56]
 */
export function vpd(air_c: any[][], humidity_percent: any[][], leaf_c?: any[][]): any[][] {
  const air = reading(air_c, engine.airCelsius, "air temperature");
  const humidity = reading(humidity_percent, engine.humidityPercent, "relative humidity");
  if (leaf_c == null) {
    return eachCell(
      (celsius: engine.Celsius, percent: engine.Percent) => engine.vapourPressureDeficit(celsius, percent),
      air,
      humidity,
    );
  }
  return eachCell(engine.vapourPressureDeficit, air, humidity, reading(leaf_c, engine.airCelsius, "leaf temperature"));
}

/**
 * Dew point of the air: a leaf or a wall colder than this gets wet.
 * @customfunction DEWPOINT
 * @helpurl https://localhost:3000/docs/functions.html#dewpoint
 * @param air_c C of the air, cell or range
 * @param humidity_percent % relative humidity, cell or range
 * @returns C
 * @remarks Refuses outside 0 to 50 C, and a humidity typed as a share (0.6 for 60).
 * @example =RUNOFF.DEWPOINT(25, 60) -> 16.70
 * @see [fao-56]
 */
export function dewpoint(air_c: any[][], humidity_percent: any[][]): any[][] {
  return eachCell(
    engine.dewPoint,
    reading(air_c, engine.airCelsius, "air temperature"),
    reading(humidity_percent, engine.humidityPercent, "relative humidity"),
  );
}

/**
 * Daily light integral: all the light a plant gets in a day from lamps that burn so many hours.
 * @customfunction DLI
 * @helpurl https://localhost:3000/docs/functions.html#dli
 * @param ppfd umol/m2 s at the leaves, cell or range
 * @param hours h of light a day, cell or range
 * @returns mol/m2 a day
 * @remarks A 0 counts as not measured. Refuses more than 24 hours.
 * @example =RUNOFF.DLI(400, 12) -> 17.28
 * @see definition
 */
export function dli(ppfd: any[][], hours: any[][]): any[][] {
  return eachCell(
    engine.dailyLight,
    reading(ppfd, engine.photonFlux, "PPFD"),
    reading(hours, engine.hours, "hours of light"),
  );
}

/**
 * Hours a day that lamps must burn to give a daily light integral: to ask less of a plant whose roots are in trouble.
 * @customfunction LIGHTHOURS
 * @helpurl https://localhost:3000/docs/functions.html#lighthours
 * @param ppfd umol/m2 s at the leaves, cell or range
 * @param dli mol/m2 a day wanted, cell or range
 * @returns h a day, 0 to 24
 * @remarks The inverse of DLI. Light from outside is not taken off. A 0 counts as not measured. Refuses what a day of 24 hours cannot give.
 * @example =RUNOFF.LIGHTHOURS(400, 17.28) -> 12
 * @see definition
 */
export function lighthours(ppfd: any[][], dli: any[][]): any[][] {
  return eachCell(
    engine.lightHours,
    reading(ppfd, engine.photonFlux, "PPFD"),
    reading(dli, engine.dailyLightIntegral, "daily light integral"),
  );
}
