import { type Band, type EarlierBand } from "../../src/index";
import { dayWithYear } from "../day-words";

const sourceInWords = (source: string): string => source.replaceAll(/\[(.+?)\]/g, "from a bulletin: $1");

const limitsInWords = ({ ph, ec }: Band): string => `pH ${ph.join(" to ")}, EC ${ec.join(" to ")} mS/cm`;

/** The words of the limits. */
export const limitsWords = {
  limits: "Limits, and my own",
  limitNames: { phLow: "pH low", phHigh: "pH high", ecLow: "EC low", ecHigh: "EC high" },
  noneInForce: "None in force yet.",
  inForce: (band: Band): string => `In force: runoff ${limitsInWords(band)} (${sourceInWords(band.source.ec)}).`,
  before: ({ band, until }: EarlierBand): string =>
    `Rows before ${dayWithYear(until)} are held against what stood then: ${limitsInWords(band)}.`,
  own: "Own limits of the runoff, EC in mS/cm: fill in all four and they win over the medium's.",
  fromWhen: "From when do these limits hold?",
  allRows: "always: for all rows",
  fromDay: (day: number, newest: number): string =>
    day > newest ? "the next reading on" : `${dayWithYear(day)}${day === newest ? ", the newest reading" : ""}`,
} as const;
