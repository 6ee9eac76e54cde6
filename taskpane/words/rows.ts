/** "1,200,000": the same on every machine. */
const thousands = (count: number): string => count.toLocaleString("en");

/** The words over the rows that were read. */
export const rowsWords = {
  select: "Select rows of your log in the sheet, or one cell inside it.",
  read: "Read the selection",
  follow: "Follow selection",
  emptySheet: (sheet: string): string =>
    `The sheet ${sheet} is empty. A log begins with a row of names, such as Date, Feed EC (mS/cm), Feed pH, Runoff EC (mS/cm), Runoff pH; a row for each watering stands under it.`,
  tooLarge: (cells: number, most: number): string =>
    `That is ${thousands(cells)} cells; ${thousands(most)} can be read at once. Select the rows of the last months: the header above them is found by itself. Or select the columns of dates, EC, pH and litres only.`,
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
