/** What is said of the page itself. */
export const pageWords = {
  work: "Work on the sheet",
  notLoaded: "This part of the pane could not be loaded. Try again when the network is back.",
  notReadAgain: "The pane could not read the sheet after it: read the selection again.",
  fault: (what: string): string =>
    `Something in the pane failed (${what}). Look at the sheet before you go on; reading the selection starts afresh.`,
} as const;

export const answerWords = { takeBack: "Take it back" } as const;
