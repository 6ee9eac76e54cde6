/**
 * The only file that calls Excel.run: every command to the workbook passes through `inExcel`, and every failure leaves it
 * as words that a person can act on.
 */

/** What went wrong with the sheet, and what to do about it. */
export class SheetProblem extends Error {
  readonly kind: SheetProblemKind;
  constructor(kind: SheetProblemKind, message: string = sheetProblems[kind]) {
    super(message);
    this.name = "SheetProblem";
    this.kind = kind;
  }
}

const sheetProblems = {
  editing: "A cell is being edited. Press Enter or Escape in the sheet, then try again.",
  protected: "This sheet is protected. Unprotect it (Review, Unprotect Sheet), then try again.",
  selection: "Select cells of the log first: a few rows, whole columns, or one cell inside it.",
  empty: "There is nothing in the selected cells. Select rows of the log.",
  "too large": "That is more than can be read at once. Select fewer rows or columns.",
  "no longer there": "That sheet or range is no longer there. Read the selection again.",
  "not offered": "This version of Excel does not offer what this needs. The rest of the pane still works.",
  filled: "There are filled cells in that place, and none is ever overwritten.",
  changed: "It was changed since, so that nothing was taken back. What is there now stays.",
  "no host": "This page is the task pane of Runoff Ledger: open it from the ribbon of Excel.",
  unknown: "Excel did not carry this out. Nothing was changed; try again.",
} as const;
export type SheetProblemKind = keyof typeof sheetProblems;

/** The host's error codes that have words of their own. */
const kindOfCode: Readonly<Record<string, SheetProblemKind>> = {
  InvalidOperationInCellEditMode: "editing",
  AccessDenied: "protected",
  InvalidSelection: "selection",
  ItemNotFound: "no longer there",
  ApiNotFound: "not offered",
  ApiNotAvailable: "not offered",
  NotImplemented: "not offered",
  UnsupportedOperation: "not offered",
  RequestPayloadSizeLimitExceeded: "too large",
  ResponsePayloadSizeLimitExceeded: "too large",
};

/** Whether work may wait until the person has left the cell they are typing into; asked for by a button it may not, and says so. */
export interface Haste {
  readonly canWait: boolean;
}

/** Runs commands in the workbook as one step of its undo list. */
export async function inExcel<T>(batch: (context: Excel.RequestContext) => Promise<T>, { canWait }: Haste = { canWait: false }): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: canWait, mergeUndoGroup: true } as Excel.RunOptions, batch);
  } catch (problem) {
    throw asSheetProblem(problem);
  }
}

function asSheetProblem(problem: unknown): SheetProblem {
  if (problem instanceof SheetProblem) return problem;
  const code = typeof problem === "object" && problem !== null && "code" in problem ? String(problem.code) : "";
  const kind = kindOfCode[code];
  if (kind !== undefined) return new SheetProblem(kind);
  return new SheetProblem("unknown", code === "" ? sheetProblems.unknown : `${sheetProblems.unknown} (${code})`);
}
