/**
 * What was read on one irrigation: pH, and EC in mS/cm at 25 C; a reading not taken is `undefined`. Plain numbers,
 * because a judgement weighs by itself whether a reading can be believed, where a formula would refuse it.
 */
export interface RootZoneReading {
  readonly inputPh?: number | undefined;
  readonly inputEc?: number | undefined;
  readonly runoffPh?: number | undefined;
  readonly runoffEc?: number | undefined;
}

/**
 * Below this input EC, in mS/cm, the pot was given water, not feed, and a ratio against it says nothing. Common
 * practice.
 */
export const weakestFeedEc = 0.5;
