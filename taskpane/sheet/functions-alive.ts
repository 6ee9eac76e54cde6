import { isOurs, repaired } from "../formulas/repaired";
import { runsFunctions } from "../start-problem";
import { inExcel, SheetProblem, writingInExcel } from "../workbook";
import { counted, type Done, takeBackCells } from "./done";
import { formulasOfWorkbook, inBlocks, type SheetFormulas } from "./every-sheet";
import { writeOnSheets } from "./write-on-sheets";

/** Whether the worksheet functions answer, and what is to be mended. */
export interface FunctionsState {
  readonly words: string;
  /** Formulas to enter again. */
  readonly broken: number;
  /** Formulas of ours that "keep values only" would turn. */
  readonly alive: number;
}

/** What a cell shows while its function has not answered. */
const waiting: ReadonlySet<unknown> = new Set(["#BUSY!", "#CONNECT!", "#GETTING_DATA"]);

/** Looks at the formulas that are there; nothing is written. */
export const functionsState = (): Promise<FunctionsState> =>
  inExcel(async (context) => {
    const all = (
      await formulasOfWorkbook(context, (formula, shows) => isOurs(formula) || repaired(formula, shows) !== undefined)
    ).flatMap(({ cells }) => cells);
    const broken = all.filter(({ formula, shows }) => repaired(formula, shows) !== undefined).length;
    const busy = all.filter(({ shows }) => waiting.has(shows)).length;
    const alive = all.length - broken - busy;
    return { words: inWords({ all: all.length, broken, busy, alive }), broken, alive };
  });

function inWords({ all, broken, busy, alive }: Readonly<Record<"all" | "broken" | "busy" | "alive", number>>): string {
  if (!runsFunctions())
    return "This version of Excel does not run worksheet functions of add-ins; the pane works without them.";
  if (all === 0) return "The functions are loaded. No formula of this workbook uses them yet.";
  const parts = [
    alive > 0 ? `${alive} of ${all} formulas answer` : `None of ${all} formulas answers`,
    busy > 0 ? `${busy} still wait for their answer` : "",
    broken > 0 ? `${counted(broken, "formula")} stuck: enter again` : "",
  ];
  return `${parts.filter((part) => part !== "").join("; ")}.`;
}

/**
 * Enters again every formula of ours that is stuck at #NAME? or stands in a foreign form; a right one is not touched.
 */
export const reenter = (): Promise<Done> =>
  writingInExcel(async (context) => {
    const found = await formulasOfWorkbook(context, (formula, shows) => repaired(formula, shows) !== undefined);
    assertOpen(found);
    const total = found.reduce((sum, { cells }) => sum + cells.length, 0);
    if (total === 0)
      return { words: "No formula is stuck.", takeBack: () => Promise.resolve("There was nothing to take back.") };
    const kept = await writeOnSheets(
      context,
      found.map(({ sheet, cells }) => ({
        sheet,
        blocks: inBlocks(cells).map(({ block, cells: inside }) => ({
          block,
          before: inside.map(({ formula }) => [formula]),
          write: (range) => {
            range.formulas = inside.map(({ formula, shows }) => [repaired(formula, shows) ?? formula]);
          },
        })),
      })),
    );
    const names = found.map(({ sheet }) => sheet.name).join(", ");
    return { words: `Entered ${counted(total, "formula")} again on ${names}.`, takeBack: () => takeBackCells(kept) };
  });

/** @throws {SheetProblem} `protected`, naming the sheet, before anything is written */
export function assertOpen(found: readonly SheetFormulas[]): void {
  const closed = found.filter(({ isProtected }) => isProtected).map(({ sheet }) => sheet.name);
  if (closed.length > 0)
    throw new SheetProblem(
      "protected",
      `${closed.join(" and ")}: protected. Unprotect (Review, Unprotect Sheet), then try again. Nothing was written.`,
    );
}
