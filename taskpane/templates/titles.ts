/** The first words of each sheet that the pane makes; the pot's name may stand after them. */
export const sheetTitles = { flush: "Flush", mix: "Mix", watch: "Watch", meter: "Meter" } as const;
