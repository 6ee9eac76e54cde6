import { isOwnSheet } from "../src/index";
import { type SheetTool } from "./next-thing";
import { sheetTitles } from "./templates/titles";

type Cells = readonly (readonly unknown[])[];

const titles: readonly (readonly [kind: SheetTool, title: string])[] = [
  ["flush sheet", sheetTitles.flush],
  ["mix sheet", sheetTitles.mix],
  ["watch sheet", sheetTitles.watch],
  ["meter sheet", sheetTitles.meter],
];

const kindTitled = (first: unknown): SheetTool | undefined =>
  titles.find(([, title]) => typeof first === "string" && (first === title || first.startsWith(`${title}: `)))?.[0];

/** Whether a sheet's first cell could be the title of a sheet of ours. */
export const mayBeOwn = (first: unknown): boolean => kindTitled(first) !== undefined;

/** Which sheet of ours these cells are, from A1 on; `undefined` where they are none. */
export const ownKind = (cells: Cells): SheetTool | undefined =>
  isOwnSheet({ cells }) ? kindTitled(cells[0]?.[0]) : undefined;
