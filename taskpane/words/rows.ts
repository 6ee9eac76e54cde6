/** The words over the rows that were read. */
export const rowsWords = {
  select: "Select rows of your log in the sheet, or one cell inside it.",
  read: "Read the selection",
  follow: "Follow selection",
  reading: "Reading ...",
  readingRows: (rows: number): string => `Reading ${rows} rows ...`,
  table: (name: string): string => `Table ${name}`,
  columns: (from: string, to: string): string => `columns ${from} to ${to}`,
  wholeLog: " (the whole log around the cell)",
  rowsRead: (rows: number): string => `${rows} ${rows === 1 ? "row" : "rows"} read`,
  setAside: (rows: number): string => `${rows} set aside`,
  blank: (rows: number): string => `${rows} blank`,
  hidden: (rows: number): string => `${rows} hidden, not read`,
  undated: (rows: number): string => `${rows} without a date`,
} as const;
