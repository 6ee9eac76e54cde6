/** A Table's name before a column of the formula's own row; within the Table a host may leave it out. */
const tableName = /(?<![\p{L}\p{N}_.])[\p{L}_][\p{L}\p{N}_.]*(?=\[@)/gu;
/** A column whose name needs no second pair of brackets. */
const plainName = /\[@\[([\p{L}\p{N}]+)\]\]/gu;

/** A formula in one form, whichever of its spellings the host answers with. */
const inOneForm = (formula: string): string =>
  formula.replaceAll(/@(?=RUNOFF\.)/g, "").replaceAll(tableName, "").replaceAll(plainName, "[@$1]");

/** Whether a cell holds just this formula. */
export const holds = (cell: unknown, formula: string): boolean =>
  cell === formula || (typeof cell === "string" && inOneForm(cell) === inOneForm(formula));
