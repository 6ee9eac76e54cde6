/** The words of medium, feeder and pot. */
export const settingsWords = {
  medium: "Medium",
  mediumOf: (pot: string): string => `Medium of ${pot}`,
  feeder: "Feeder",
  pot: "Pot or bed",
  choose: "choose ...",
  container: "Pot (L), if known",
} as const;
