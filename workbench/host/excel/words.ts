/** The host's words in rules and limits, each with that of the file format, which is the grid component's too. */
export const comparisonWords = {
  Between: "between",
  NotBetween: "notBetween",
  EqualTo: "equal",
  NotEqualTo: "notEqual",
  GreaterThan: "greaterThan",
  LessThan: "lessThan",
  GreaterThanOrEqualTo: "greaterThanOrEqual",
  LessThanOrEqualTo: "lessThanOrEqual",
} as const;

export const limitWords = {
  list: "list", wholeNumber: "whole", decimal: "decimal", date: "date", time: "time", textLength: "textLength", custom: "custom",
} as const;

/** The host's word for what has another name elsewhere. */
export function hostWord(words: Readonly<Record<string, unknown>>, elsewhere: unknown): string | undefined {
  return Object.keys(words).find((word) => words[word] === elsewhere);
}
