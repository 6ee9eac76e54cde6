import { type Ph } from "../quantities";

/**
 * pH shift: how far the runoff's pH stands from what was poured in, in pH units.
 *
 * Feeds the look at a drifting pH. Below 0 the root zone pulls pH down (ammonium feed, acid medium), above 0 it pushes
 * up (alkaline water, nitrate feed).
 *
 * Formula:  shift = runoff pH - input pH
 * Source:   common practice
 *
 * @returns pH units; negative = the pot turned the solution more acid
 * @example phShift(ph(5.4), ph(5.9)) // -0.5
 */
export const phShift = (runoffPh: Ph, inputPh: Ph): number => runoffPh - inputPh;
