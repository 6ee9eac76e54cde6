import { flushLabels as labels } from "../templates/flush/labels";

type Cells = readonly (readonly unknown[])[];

/** Whether a sheet's first cell could be the title of a flush sheet. */
export const mayBeFlush = (title: unknown): boolean =>
  typeof title === "string" && (title === labels.title || title.startsWith(`${labels.title}: `));

/** Whether these cells, from A1 on, are a flush sheet of ours. */
export const isFlushSheet = (cells: Cells): boolean =>
  mayBeFlush(cells[0]?.[0]) && cells.some(([first]) => first === labels.container);
