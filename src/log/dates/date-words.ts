/** The words of dates and clocks, lower case and without accents. Common practice, no source. */

/** The first letters of the months, as far as the five languages need them, in the months' order. */
export const monthWords: readonly (readonly string[])[] = [
  ["jan", "ene"],
  ["feb", "fev"],
  ["mar", "maerz", "maart", "mrt"],
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

/** How dates are written that need no order: no words over a column, and no millimetres. */
export const yearFirstPattern = /\by{2,4}[./-]m{1,2}[./-]d{1,2}\b/gi;

/** Parts of the day, in their order from 0; they order nothing to the minute. */
const dayParts = [
  "am a.m. morning morgens morgen manana matin ochtend mattina manha rano vormittag",
  "noon midday mittag mittags mediodia midi middag mezzogiorno poludnie",
  "pm p.m. afternoon nachmittag nachmittags tarde apres-midi namiddag pomeriggio popoludnie",
  "evening abend abends soir avond sera noite wieczor",
  "night nacht noche nuit notte noc",
] as const;
export const partsOfDay: ReadonlyMap<string, number> =
  new Map(dayParts.flatMap((words, at) => words.split(" ").map((word) => [word, at] as const)));

/** The names of the weekdays and what they are shortened to. */
const weekdayNames =
  "mon(?:day)?|tues?(?:day)?|wed(?:nesday)?|thu(?:rs?(?:day)?)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?|" +
  "mo(?:ntag)?|di(?:enstag)?|mi(?:ttwoch)?|do(?:nnerstag)?|fr(?:eitag)?|sa(?:mstag)?|so(?:nntag)?|" +
  "lun(?:es|di|edi)?|martes|mardi|martedi|mie(?:rcoles)?|mer(?:credi|coledi)?|jue(?:ves)?|jeu(?:di)?|gio(?:vedi)?|vie(?:rnes)?|" +
  "ven(?:dredi|erdi)?|sab(?:ado|ato)?|sam(?:edi)?|dom(?:ingo|enica)?|dim(?:anche)?|" +
  "ma(?:andag)?|dinsdag|wo(?:ensdag)?|donderdag|vr(?:ijdag)?|za(?:terdag)?|zo(?:ndag)?|" +
  "seg|ter|qua|qui|sex|(?:segunda|terca|quarta|quinta|sexta)(?:-feira)?|" +
  "pon(?:iedzialek)?|wt(?:orek)?|sr(?:oda)?|czw(?:artek)?|pt|piatek|sob(?:ota)?|nd|niedz(?:iela)?";

/** A cell that is a weekday and nothing else. */
export const weekdayWord = new RegExp(`^(?:${weekdayNames})\\.?$`);

/** A weekday in front of a date; "mar 3" is the third of March and not a Tuesday. */
export const weekdayBefore = new RegExp(
  `^(?:${weekdayNames}|mar(?=\\.?,?\\s+\\d{1,2}(?:[./-]\\d|\\.?\\s(?:de\\s)?[a-z])))\\.?,?\\s+(?=\\d|[a-z]{3,}\\.?\\s*\\d)`,
);
