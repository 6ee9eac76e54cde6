/** What keeps the pane, or the worksheet functions beside it, from working; empty words when nothing does. */
export interface StartProblem {
  readonly words: string;
  /** Whether the pane itself cannot work. */
  readonly inTheWay: boolean;
}

interface PageGlobals {
  readonly Office?: typeof Office;
  /** Set by functions.js once its last function is there. */
  readonly RunoffLedgerFunctions?: unknown;
}

/** The version of the host's interface that the pane is built on: Excel 2021, Microsoft 365 and the web have it. */
const neededVersion = "1.9";

const problems = {
  noHost:
    "Excel's own script could not be loaded, so the sheet cannot be read. When the network is back, close this pane and open it again. " +
    "If you see this outside Excel: this page is a task pane, open it from the ribbon of Excel.",
  otherHost: "This task pane works in Excel only. Open it from the ribbon of Excel.",
  tooOld:
    "This version of Excel is too old for the pane: it needs Excel 2021 or later, Microsoft 365, or Excel on the web. Your sheet is untouched.",
  noFunctionsHere: "This version of Excel does not run worksheet functions of add-ins. The pane works without them.",
  functionsNotLoaded:
    "The worksheet functions were not loaded: cells with RUNOFF formulas show #NAME? or #BUSY!. Close and open the workbook again. The pane works without them.",
} as const;

/** Excel on tablets and phones, and some bought once and for all, draw the pane but run no functions of add-ins. */
export const runsFunctions = (): boolean => {
  const { requirements } = Office.context;
  return (
    requirements.isSetSupported("CustomFunctionsRuntime", "1.1") && requirements.isSetSupported("SharedRuntime", "1.1")
  );
};

/** Asks the host what it is before anything else is asked of it. */
export async function startProblem(): Promise<StartProblem> {
  const { Office: office, RunoffLedgerFunctions: functions } = globalThis as PageGlobals;
  if (office === undefined) return { words: problems.noHost, inTheWay: true };
  const { host } = await office.onReady();
  if (host !== office.HostType.Excel) return { words: problems.otherHost, inTheWay: true };
  if (!office.context.requirements.isSetSupported("ExcelApi", neededVersion))
    return { words: problems.tooOld, inTheWay: true };
  if (!runsFunctions()) return { words: problems.noFunctionsHere, inTheWay: false };
  return { words: functions === undefined ? problems.functionsNotLoaded : "", inTheWay: false };
}
