import { type SheetTool } from "../next-thing";

/** The words of the work on the sheet. */
export const workWords = {
  title: "Work on the sheet",
  promise: "Nothing here writes over a filled cell.",
  columnsIntoTable: "Columns to put into the Table",
  columnsBeside: "Columns to put beside the log",
  uncompensated: "The meter does not correct EC to 25 C",
  kind: "Columns compute",
  kinds: {
    functions: "as functions",
    plain: "as plain formulas, for phones and people without the add-in",
  },
  wordsStayBlank:
    "A plain formula reads figures only: beside a cell of words (1.8 mS, n/a) it stays blank; its #N/A tells no reason.",
  turnColumns: "Turn the columns that are there into this kind",
  addColumns: "Add the ticked columns",
  plantColumns: "Add plant columns",
  plantThere: "The log has columns for new growth, posture, spread of symptoms and roots already.",
  nextRow: (row: number): string => `Write the readings into row ${row}.`,
  noRowBelow: (row: number): string =>
    `Row ${row}, under the readings, is not empty: insert a row above it and write the readings there.`,
  newestFirst: (row: number): string =>
    `This log has its newest reading on top: insert a row above row ${row} and write the readings there.`,
  extend: "Carry on into new rows",
  mark: "Mark flagged rows",
  unmark: "Remove the marks",
  newSheet: (tool: SheetTool): string => `New ${tool}`,
  looking: "Looking at the functions ...",
  lookAgain: "Look again",
  reenter: "Enter stuck formulas again",
  valuesOnly: "Keep values only",
  askValuesOnly: (alive: number): string =>
    `Turn ${alive === 1 ? "the one formula" : `all ${alive} formulas`} of this workbook that use the functions into the values they show? They no longer follow the readings then.`,
  turn: "Turn into values",
  leave: "Leave them",
  takeBack: "Take back the last step",
  tickFirst: "Tick a column that is not there yet and that the log has the readings for.",
} as const;
