const andMore = 6;
const inWords = (names: readonly string[]): string =>
  names.length > andMore
    ? `${names.slice(0, andMore).join(", ")} and ${names.length - andMore} more`
    : names.join(", ");

/** The words of a workbook's logs. */
export const logsWords = {
  several: (names: readonly string[]): string => `This book holds ${names.length} logs: ${inWords(names)}.`,
  elsewhere: (name: string): string => `This book holds a log: ${name}.`,
  read: (name: string): string => `Read ${name}`,
  shown: "Log shown",
  choose: "choose ...",
} as const;
