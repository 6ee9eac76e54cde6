import { type Choices, noChoices } from "./choices";
import { type PaneState } from "./pane-state";
import { headersOf } from "./root-zone";
import { keep, kept } from "./sheet/keep";
import { type SheetSelection } from "./sheet/read-selection";

/** Answers belong to a sheet and its headers: under this name the workbook keeps them. */
const nameOfLog = (selection: SheetSelection): string => `${selection.sheetId} ${headersOf(selection).join(" | ")}`;

/** The choices of the moment while the log is the same, else what was chosen for it before in this workbook. */
export async function choicesFor(selection: SheetSelection, { selection: before, choices }: PaneState): Promise<Choices> {
  if (before !== undefined && nameOfLog(before) === nameOfLog(selection)) return choices;
  const remembered = (await kept(nameOfLog(selection))) as Partial<Choices> | undefined;
  return { ...noChoices, ...remembered };
}

export const keepChoices = (selection: SheetSelection, choices: Choices): Promise<void> => keep(nameOfLog(selection), choices);
