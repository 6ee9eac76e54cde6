import { type FormulaKind } from "../formulas/computed-columns";

const called: Readonly<Record<FormulaKind, string>> = { functions: "functions", plain: "plain formulas" };

/** So many cells are named at most. */
const named = 4;
const names = (cells: readonly string[]): string =>
  cells.slice(0, named).join(", ") + (cells.length > named ? " and more" : "");

/** The words of turning computed columns from one kind of formula into the other. */
export const turnWords = {
  none: "There are no computed columns beside this log yet. Add them first.",
  nothing: "There was nothing to take back.",
  already: (kind: FormulaKind, sheet: string): string => `No formula of ${sheet} is left to turn into ${called[kind]}.`,
  turned: (kind: FormulaKind, count: number, where: string): string =>
    `Turned ${count === 1 ? "one formula" : `${count} formulas`} into ${called[kind]}, on ${where}.`,
  /** What stays because it is not, letter for letter, what is written here. */
  changed: (cells: readonly string[]): string =>
    cells.length === 0 ? "" : ` Left as it stands, changed by hand or made for other limits: ${names(cells)}.`,
} as const;
