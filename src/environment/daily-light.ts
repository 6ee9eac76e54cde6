import { type DailyLight, type Hours, type PhotonFlux } from "../quantities";
import { Refusal } from "../refusal";

const secondsPerHour = 3600;
const micromolesPerMole = 1_000_000;

/**
 * Daily light integral, in mol/m2 a day: all the light a plant gets from lamps that burn so many hours.
 *
 * Feeds uptake and so how fast salts concentrate: more light, more water drawn.
 *
 * Formula:  DLI = PPFD x hours x 3600 / 1 000 000
 * Valid:    a steady lamp; for daylight give the mean over the hours
 * Source:   definition
 *
 * @param ppfd umol/m2 s at the leaves
 * @param hours h a day
 * @example dailyLight(photonFlux(400), hours(12)) // 17.28
 */
export const dailyLight = (ppfd: PhotonFlux, hours: Hours): number =>
  (ppfd * hours * secondsPerHour) / micromolesPerMole;

const hoursInADay = 24;

/** What the last digits of a product may add to a whole day, as a share of it. */
const roundOff = 1e-9;

/**
 * Hours a day that a lamp must burn to give a daily light integral: the inverse of `dailyLight`.
 *
 * Feeds easing the load of a plant whose roots are in trouble: fewer moles a day for some days. Light that comes in
 * from outside is not taken off.
 *
 * Formula:  hours = DLI x 1 000 000 / (PPFD x 3600)
 * Valid:    up to 24 hours; beyond: refuses
 * Source:   definition
 *
 * @param ppfd umol/m2 s at the leaves
 * @param light mol/m2 a day
 * @returns h a day, 0 to 24
 * @throws {Refusal} `impossible` without light; `outside-validity` when a day is too short for it
 * @example lightHours(photonFlux(400), dailyLightIntegral(17.28)) // 12
 */
export function lightHours(ppfd: PhotonFlux, light: DailyLight): Hours {
  if (!(ppfd > 0))
    throw new Refusal("impossible", { quantity: "PPFD", given: ppfd, unit: "umol/m2 s", allowed: "above 0" });
  const hours = (light * micromolesPerMole) / (ppfd * secondsPerHour);
  if (hours <= hoursInADay * (1 + roundOff)) return Math.min(hours, hoursInADay) as Hours;
  const most = Number(((ppfd * hoursInADay * secondsPerHour) / micromolesPerMole).toFixed(2));
  const allowed = `a light integral of at most ${most} at this PPFD, all a day has`;
  throw new Refusal("outside-validity", {
    quantity: "daily light integral",
    given: light,
    unit: "mol/m2 a day",
    allowed,
  });
}
