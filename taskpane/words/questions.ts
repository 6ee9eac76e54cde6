/** The words of what the sheet does not tell; each question is worded by the log reader. */
export const questionsWords = {
  title: (count: number): string => (count === 1 ? "One question first" : `${count} questions first`),
  choose: "choose ...",
} as const;
