import { readLog } from "../src/index";
import { type SheetSelection } from "./sheet/read-selection";

/** Headers stand within so many rows from the top, and what they say does not change with the rows below. */
const headerReach = 60;

/** The headers as the reader finds them without further answers: the names under which answers are kept. */
export function headersOf({ grid }: SheetSelection, headerRow?: number): string[] {
  const top = { ...grid, cells: grid.cells.slice(0, headerReach) };
  return readLog(top, headerRow === undefined ? {} : { headerRow }).columns.map(({ header }) => header);
}
