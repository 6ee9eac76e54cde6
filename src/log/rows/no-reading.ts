import { isBlank, quoted } from "../../cells/text";
import { type ColumnReading, type SetAside } from "../reading";
import { rowIn } from "../sheet-place";
import { type BodySource, type BodyState } from "./body-state";
import { type RowRead } from "./draft";
import { headerAgain, headingIn, sameWords } from "./row-kinds";
import { summaryIn } from "./summary-row";

/** Why a filled row is no row of readings; `undefined` when it may be one. */
export function notAReading(
  row: number,
  cells: readonly unknown[],
  state: BodyState,
  source: BodySource,
): string | undefined {
  const { grid, header, headers, columns } = source;
  if (state.ended) return "belongs to another table";
  const again = header === undefined ? undefined : headerAgain(grid, row, headers, grid.cells[header.main] ?? []);
  if (header?.rows.some((each) => sameWords(cells, grid.cells[each] ?? [])) === true) return "repeats the header";
  if (again === "same") return "repeats the header";
  if (again === "other") {
    state.ended = true;
    return "names other columns: another table begins here";
  }
  const heading = headingIn(cells);
  if (heading !== undefined && !columns.some(({ read, quantity }) => read && quantity === "vessel")) {
    state.heading = heading;
    return "names the vessel of the rows below";
  }
  return summaryIn(cells, columns) ?? sameAs(row, cells, state, source);
}

/** A dated row that repeats an earlier one in every cell. */
function sameAs(
  row: number,
  cells: readonly unknown[],
  state: BodyState,
  { grid, columns }: BodySource,
): string | undefined {
  const dated = columns.some(({ column, quantity }) => quantity === "date" && !isBlank(cells[column]));
  const earlier = dated ? state.repeats(row, state.heading) : undefined;
  return earlier === undefined ? undefined : `repeats row ${rowIn(grid, earlier)} in every cell`;
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
