/** A call of one of our functions as a person types it. */
const typedCall = /\bRUNOFF\.([A-Z][A-Z0-9]*)\(/g;

/** Whether a formula calls one of our own functions. */
export const callsOurs = (typed: string): boolean => typed.search(typedCall) >= 0;

/** The formula as the host stores it on disk: our functions under their stored name, and its own newer ones under theirs. */
export const stored = (typed: string): string => typed.replace(typedCall, "_xldudf_RUNOFF_$1(");
