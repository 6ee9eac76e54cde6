/**
 * The only file that calls Excel.run: every command to the workbook passes through `inExcel`, and every failure leaves
 * it as words that a person can act on.
 */

/** What went wrong with the sheet, and what to do about it. */
export class SheetProblem extends Error {
  readonly kind: SheetProblemKind;
  /** Where something half-done stands on a sheet: makes it as it was before, as often as it is asked to. */
  readonly takeBack: (() => Promise<string>) | undefined;
  constructor(kind: SheetProblemKind, message: string = sheetProblems[kind], takeBack?: () => Promise<string>) {
    super(message);
    this.name = "SheetProblem";
    this.kind = kind;
    this.takeBack = takeBack;
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
  stopped: "Excel stopped half-way.",
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

/**
 * Whether work may wait until the person has left the cell they are typing into; asked for by a button it may not, and
 * says so.
 */
export interface Haste {
  readonly canWait: boolean;
}

type Batch<T> = (context: Excel.RequestContext) => Promise<T>;

/** Runs commands in the workbook that change nothing a person would want to undo. */
export const inExcel = <T>(batch: Batch<T>, { canWait }: Haste = { canWait: false }): Promise<T> =>
  told(() => Excel.run({ delayForCellEdit: canWait }, batch));

/** Whether this host has a part of its interface: `offers("1.12")`. */
export const offers = (version: string): boolean => Office.context.requirements.isSetSupported("ExcelApi", version);

/**
 * The host's answer where a command cannot join a step of its undo list; the batch has put back what it wrote by then.
 */
export const noUndo = "UndoNotSupported";

/**
 * Runs commands that write, as one step of the host's undo list; where the host cannot, it runs them again in several
 * steps.
 */
export const writingInExcel = <T>(batch: Batch<T>): Promise<T> =>
  told(async () => {
    try {
      return await Excel.run({ delayForCellEdit: false, ...(offers("1.20") ? { mergeUndoGroup: true } : {}) }, batch);
    } catch (problem) {
      if (codeOf(problem) !== noUndo) throw problem;
      return await Excel.run({ delayForCellEdit: false }, batch);
    }
  });

async function told<T>(run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (problem) {
    throw asSheetProblem(problem);
  }
}

/** The host's code for what went wrong; empty where it is no error of the host. */
export const codeOf = (problem: unknown): string =>
  typeof problem === "object" && problem !== null && "code" in problem ? String(problem.code) : "";

export function asSheetProblem(problem: unknown): SheetProblem {
  if (problem instanceof SheetProblem) return problem;
  const code = codeOf(problem);
  const kind = kindOfCode[code];
  if (kind !== undefined) return new SheetProblem(kind);
  return new SheetProblem("unknown", code === "" ? sheetProblems.unknown : `${sheetProblems.unknown} (${code})`);
}
