import { type LogGrid } from "./reading";

/** The words that stand under the title of each sheet that is made here. */
export const ownSheetNote = "Boxes are yours; the shaded cells follow.";

/** Whether a sheet is one of ours: a flush, a mix, a watch or the meters. */
export const isOwnSheet = ({ cells }: LogGrid): boolean =>
  cells.slice(0, 3).some(([first]) => typeof first === "string" && first.startsWith(ownSheetNote));
