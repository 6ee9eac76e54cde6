const millisecondsADay = 86_400_000;
/** The sheet's day 25569 is 1 January 1970. */
const unixDay = 25_569;

/** A sheet's day as an instant, read as UTC so that no time zone moves it. */
export const instant = (day: number): Date => new Date(Math.round((day - unixDay) * millisecondsADay));
