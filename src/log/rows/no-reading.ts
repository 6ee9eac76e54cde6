import { isBlank, quoted } from "../../cells/text";
import { type ColumnReading, type SetAside } from "../reading";
import { rowIn } from "../sheet-place";
import { type BodySource, type BodyState } from "./body-state";
import { type RowRead } from "./draft";
import { headerAgain, headingIn, isInWords, wordsOf } from "./row-kinds";
import { summaryFinder } from "./summary-row";

/** Finds why a filled row is no row of readings, `undefined` when it may be one; the columns are looked up once. */
export function noReadingFinder(
  { grid, header, headers, columns }: BodySource,
  state: BodyState,
): (row: number, cells: readonly unknown[]) => string | undefined {
  const main = header === undefined ? undefined : (grid.cells[header.main] ?? []);
  const headerRows = (header?.rows ?? []).map((each) => wordsOf(grid.cells[each] ?? []));
  const dates = columns.filter(({ quantity }) => quantity === "date");
  const namesVessels = columns.some(({ read, quantity }) => read && quantity === "vessel");
  const summaryIn = summaryFinder(columns);
  /** A dated row that repeats an earlier one in every cell. */
  const sameAs = (row: number, cells: readonly unknown[]): string | undefined => {
    const dated = dates.some(({ column }) => !isBlank(cells[column]));
    const earlier = dated ? state.repeats(row, state.heading) : undefined;
    return earlier === undefined ? undefined : `repeats row ${rowIn(grid, earlier)} in every cell`;
  };
  return (row, cells) => {
    if (state.ended) return "belongs to another table";
    const again = main === undefined ? undefined : headerAgain(grid, row, headers, main);
    if (again === "same" || headerRows.some((words) => isInWords(cells, words))) return "repeats the header";
    if (again === "other") {
      state.ended = true;
      return "names other columns: another table begins here";
    }
    const heading = headingIn(cells);
    if (heading !== undefined && !namesVessels) {
      state.heading = heading;
      return "names the vessel of the rows below";
    }
    return summaryIn(cells) ?? sameAs(row, cells);
  };
}

/** Why nothing is left of a row that was read. */
export function nothingIn(
  { draft, problems }: RowRead,
  cells: readonly unknown[],
  columns: readonly ColumnReading[],
): SetAside {
  const filled = cells.filter((cell) => !isBlank(cell));
  if (filled.length === 1 && typeof filled[0] === "string")
    return { row: draft.row, reason: `no reading in this row, only ${quoted(filled[0])}` };
  const bad = problems.find(({ reason, column }) => !isBlank(cells[column]) && reason !== "");
  if (bad !== undefined) return { row: draft.row, column: bad.column, reason: `no reading: ${bad.reason}` };
  const waits = columns.find(
    ({ column, unit, quantity, read }) =>
      !read && !isBlank(cells[column]) && (unit === undefined || quantity === "other"),
  );
  const text =
    waits === undefined
      ? ""
      : waits.why === ""
        ? `; column ${waits.letters} is not read`
        : `; column ${waits.letters} is not read: ${waits.why}`;
  return { row: draft.row, reason: `no reading in this row${text}` };
}
