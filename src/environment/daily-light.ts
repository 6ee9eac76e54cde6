import { type Hours, type PhotonFlux } from "../quantities";

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
export const dailyLight = (ppfd: PhotonFlux, hours: Hours): number => (ppfd * hours * secondsPerHour) / micromolesPerMole;
