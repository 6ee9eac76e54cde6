/** A law's number of random cases; `npm run laws` asks for many times as many. */
export const times = (numRuns: number): { numRuns: number } => ({ numRuns: numRuns * (isSearch ? 20 : 1) });

/** Whether new cases are looked for, rather than the same ones tried on every machine. */
export const isSearch = process.env["MODE"] === "search";
