/** The words of what was set aside or doubted; each reason is worded by the log reader. */
export const setAsideWords = {
  title: (cells: number): string => `Set aside or doubted: ${cells}`,
  row: (row: number): string => `Row ${row}`,
  alike: (rows: number): string => (rows === 1 ? "" : `, and ${rows - 1} rows like it`),
  usedAllTheSame: " (used all the same)",
  more: (lines: number): string => `and ${lines} more`,
} as const;
