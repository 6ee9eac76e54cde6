/** The words around the timeline. */
export const pictureWords = {
  title: "Recovery timeline",
  titleOf: (sheet: string, pot: string | undefined): string =>
    `Recovery timeline: ${sheet}${pot === undefined ? "" : `, ${pot}`}`,
  range: "Shown",
  place: "Place on sheet",
  placed: (sheet: string, address: string): string =>
    `Placed on ${sheet} at ${address}, beside everything that is filled.`,
  earlierStays: "An earlier picture could not be removed: delete it by hand.",
  sideBySide: "Runoff EC of all pots, side by side",
  smallPot: (ec: string | undefined): string => `runoff EC${ec === undefined ? "" : ` ${ec}`}`,
  howToRead: "Touch or point at a reading, or use the arrow keys. Enter selects its row.",
} as const;
