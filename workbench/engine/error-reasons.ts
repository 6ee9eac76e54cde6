import type { ErrorValue } from "../host/functions-host";

/** What each error of the sheet means, for a formula that gave no reason of its own. */
const meanings: Readonly<Record<string, string>> = {
  "#VALUE!": "a value of the wrong kind, in the formula or in a cell it reads",
  "#N/A": "a value is not available, in the formula or in a cell it reads",
  "#DIV/0!": "it divides by zero or by a blank cell",
  "#NUM!": "a number in it cannot be computed",
  "#NAME?": "it names a function or a cell name that is not known here",
  "#REF!": "it reads a cell, a table or a column that does not exist",
  "#NULL!": "the ranges it joins do not meet",
  "#SPILL!": "the cells that its answer needs are not all free",
  "#CALC!": "its answer is empty",
};

export function withReason(error: string, reason: string | undefined): ErrorValue {
  return { error, reason: reason ?? meanings[error] ?? "the formula cannot be computed" };
}
