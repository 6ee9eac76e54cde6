/** The words of the columns as they were read; why is worded by the log reader. */
export const columnsWords = {
  title: "How each column was read",
  column: (letters: string, header: string): string => (header === "" ? letters : `${letters} "${header}"`),
  unitOf: (letters: string): string => `Unit of ${letters}`,
  choose: "choose ...",
  notRead: (why: string): string => `not read: ${why}`,
} as const;
