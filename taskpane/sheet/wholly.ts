import { asSheetProblem, codeOf, inExcel, noUndo, SheetProblem } from "../workbook";

/** What is about to be written, and the way back. */
export interface Change {
  /** Where to look, should it stop half-way: "K4:M60 of Log". */
  readonly where: string;
  /** Queues every write; all of them are carried out in one sync. */
  readonly write: () => void;
  /** Makes all as it was before, however much of the change stands; a second time it changes nothing more. */
  readonly putBack: (context: Excel.RequestContext) => Promise<void>;
}

/** The codes with which the host refuses a batch before it carries out any of it. */
const refusedWhole: ReadonlySet<string> = new Set(["InvalidOperationInCellEditMode"]);

/**
 * Writes in one sync, whole or not at all: the host carries a batch out command by command and stops at the first that
 * fails, so that what stands by then is put back. Where that fails too, the person is told where to look, with a way
 * back.
 *
 * @throws {SheetProblem} as before; or `stopped`, with `takeBack`, when part of the change may stand
 */
export async function wholly(context: Excel.RequestContext, { where, write, putBack }: Change): Promise<void> {
  write();
  try {
    await context.sync();
  } catch (problem) {
    if (refusedWhole.has(codeOf(problem))) throw problem;
    await backTo(putBack, where, problem);
    throw asBefore(problem);
  }
}

async function backTo(putBack: Change["putBack"], where: string, cause: unknown): Promise<void> {
  try {
    await inExcel(putBack);
  } catch {
    const again = async (): Promise<string> => {
      await inExcel(putBack);
      return `Taken back: ${where} is as it was before.`;
    };
    const why = asSheetProblem(cause).message;
    throw new SheetProblem(
      "stopped",
      `Excel stopped half-way, and part of it may stand at ${where}. Press "Take back" to have it as it was before. (${why})`,
      again,
    );
  }
}

/** The host's own error, with words that are true now: all that was written has been put back. */
function asBefore(problem: unknown): unknown {
  const known = asSheetProblem(problem);
  if (known.kind !== "unknown" || codeOf(problem) === noUndo) return problem;
  return new SheetProblem("unknown", "Excel did not carry this out. Everything is as it was before; try again.");
}
