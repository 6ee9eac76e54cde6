/** The words of dates and clocks, lower case and without accents. Common practice, no source. */

/** The first letters of the months, as far as the five languages need them, in the months' order. */
export const monthWords: readonly (readonly string[])[] = [
  ["jan", "ene"],
  ["feb", "fev"],
  ["mar", "maerz", "mrt"],
  ["apr", "abr", "avr"],
  ["may", "mai", "mei"],
  ["jun", "juin"],
  ["jul", "juil"],
  ["aug", "ago", "aou"],
  ["sep", "set"],
  ["oct", "okt"],
  ["nov"],
  ["dec", "dez", "dic"],
];

/** Columns that state how their dates are written. */
export const dateOrderPatterns = {
  "day first": /\b(?:d{1,2}|t{1,2}|j{1,2})[./-]m{1,3}[./-](?:y{1,4}|j{2,4}|a{2,4})\b/,
  "month first": /\bm{1,2}[./-]d{1,2}[./-]y{1,4}\b/,
} as const;

/** Parts of the day in a time column: they order nothing to the minute, and nothing is lost by leaving them. */
export const partsOfDay: ReadonlySet<string> = new Set("am pm morning noon midday afternoon evening night".split(" "));
