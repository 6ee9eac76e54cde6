// The usual cautions, once: labels, local rules and licensed practice come first.

/** Wherever a course pours water through a pot. */
export const drainCaution = "Keep drain water away from electrical gear, and get rid of it as local rules say.";
/** Wherever a course asks for an acid or a base. */
export const acidCaution =
  "Acids and bases by their labels: goggles and gloves, always into the water, never into each other.";
/** Wherever a course asks for a concentrate. */
export const concentrateCaution = "Concentrates by their labels, with gloves, each into the full volume of water.";
