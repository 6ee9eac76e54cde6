/** C of the rows of the table below. */
export const bufferCelsius = [0, 5, 10, 15, 20, 25, 30, 37, 40, 50] as const;

/** The technical buffer labelled 7.00, as instrument makers print it [technical-buffers]. */
const technical = [7.118, 7.087, 7.059, 7.036, 7.016, 7.0, 6.987, 6.974, 6.97, 6.964] as const;

/**
 * By how much the bottles labelled 7.01 stand above those labelled 7.00, at every temperature within 0.01. From memory
 * of their labels.
 */
const labelStep = 0.01;

/**
 * pH of the buffers, by the pH on their label, at the temperatures above. IUPAC 2002, table 2 [iupac-ph-2002]:
 * phthalate, phosphate 1:1, borax, carbonate; the two technical ones as above. A bottle labelled 4.00 is the phthalate
 * buffer within 0.005.
 */
export const buffers = {
  "4.01": [4.0, 3.998, 3.997, 3.998, 4.001, 4.005, 4.011, 4.022, 4.027, 4.05],
  "6.86": [6.984, 6.951, 6.923, 6.9, 6.881, 6.865, 6.853, 6.841, 6.838, 6.833],
  "7.00": technical,
  "7.01": technical.map((ph) => ph + labelStep),
  "9.18": [9.464, 9.395, 9.332, 9.276, 9.225, 9.18, 9.139, 9.088, 9.068, 9.01],
  "10.01": [10.317, 10.245, 10.179, 10.118, 10.062, 10.012, 9.966, 9.91, 9.889, 9.828],
} as const satisfies Record<string, readonly number[]>;

export type BufferName = keyof typeof buffers;
