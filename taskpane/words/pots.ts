/** The words of the list of pots. */
export const potsWords = {
  title: "All pots, the most urgent first",
  withoutLimits: (pots: readonly string[]): string =>
    `No limits yet: ${pots.join(", ")}. Choose the pot, then its medium.`,
  more: (count: number): string => `${count} more`,
} as const;
