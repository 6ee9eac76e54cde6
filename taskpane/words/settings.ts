import { type Band } from "../../src/index";

/** The words of medium, feeder, pot and limits. */
export const settingsWords = {
  medium: "Medium",
  mediumOf: (pot: string): string => `Medium of ${pot}`,
  feeder: "Feeder",
  pot: "Pot or bed",
  choose: "choose ...",
  container: "Pot (L), if known",
  limits: "Limits, and my own",
  limitNames: { phLow: "pH low", phHigh: "pH high", ecLow: "EC low", ecHigh: "EC high" },
  noneInForce: "None in force yet.",
  inForce: (band: Band): string =>
    `In force: runoff pH ${band.ph.join(" to ")}, EC ${band.ec.join(" to ")} mS/cm (${sourceInWords(band.source.ec)}).`,
  own: "Own limits of the runoff, EC in mS/cm: fill in all four and they win over the medium's.",
} as const;

const sourceInWords = (source: string): string =>
  source.replaceAll(/\[(.+?)\]/g, "from a bulletin: $1");
