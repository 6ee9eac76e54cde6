import { type Draft, type RowRead } from "./draft";
import { type ColumnHeader, type Header } from "../columns/header-rows";
import { dateDoubts } from "../dates/order-checks";
import { type CellProblem, type ColumnReading, type LogGrid, type LogReading, type SetAside } from "../reading";
import { dropOutliers } from "./outliers";
import { joinSides } from "./join-sides";
import { repeatFinder } from "./repeats";
import { headerAgain, headingIn, sameWords } from "./row-kinds";
import { type RowReader } from "./row-reader";
import { rowIn } from "../sheet-place";
import { isBlank, quoted } from "../../cells/text";
import { sidesIn } from "../columns/side-columns";
import { dropFoot } from "./foot";
import { summaryIn } from "./summary-row";
import { type Above, takeDayAbove } from "./undated";
import { joinVessels } from "./vessels";

export interface BodySource {
  readonly grid: LogGrid;
  readonly header: Header | undefined;
  readonly headers: readonly ColumnHeader[];
  readonly columns: readonly ColumnReading[];
  readonly reader: RowReader;
}

type Body = Pick<LogReading, "rows" | "setAside" | "problems" | "blankRows" | "vessels">;

interface State {
  readonly rows: Draft[];
  readonly setAside: SetAside[];
  readonly problems: CellProblem[];
  readonly repeats: ReturnType<typeof repeatFinder>;
  blankRows: number;
  /** The vessel named by a heading over its rows. */
  heading: string | undefined;
  /** The row of readings above. */
  above: Above | undefined;
  /** Whether another table has begun. */
  ended: boolean;
}

/** Reads every row that is not a header: used, set aside with its reason, or blank; never lost. */
export function readBody(source: BodySource): Body {
  const { grid, header } = source;
  const state: State = {
    rows: [],
    setAside: [],
    problems: [],
    repeats: repeatFinder(grid.cells),
    blankRows: 0,
    heading: undefined,
    above: undefined,
    ended: false,
  };
  const headerRows = new Set(header?.rows);
  const first = header?.rows[0] ?? 0;
  grid.cells.forEach((cells, row) => {
    if (headerRows.has(row)) return;
    if (cells.every(isBlank)) state.blankRows += 1;
    else if (row < first) aboveHeader(row, cells, state);
    else readRow(row, cells, state, source);
  });
  joinRowsOfSides(state, source);
  if (source.columns.some(({ read, quantity }) => read && quantity === "date"))
    dropFoot(state, (row) => grid.cells[row - 1]?.every(isBlank) ?? false);
  fillVessels(state, source.columns);
  const vessels = nameVessels(state, source.columns);
  state.problems.push(...withoutDoubts(dropOutliers(state.rows, source.columns), state.problems));
  const date = source.columns.find(({ read, quantity }) => read && quantity === "date")?.column ?? 0;
  const doubts = dateDoubts(state.rows).map(({ row, reason }) => ({ row, column: date, used: true, reason }));
  const problems = [...state.problems, ...doubts].sort((a, b) => a.row - b.row || a.column - b.column);
  return {
    rows: state.rows,
    setAside: state.setAside.sort((a, b) => a.row - b.row),
    problems,
    blankRows: state.blankRows,
    vessels,
  };
}

function joinRowsOfSides(state: State, { columns, grid }: BodySource): void {
  const says = columns.find(({ bySide }) => bySide !== undefined)?.bySide?.column;
  if (says !== undefined) joinSides(state, sidesIn(grid, says));
}

/** A title; where it is a pot's name, the rows below are that pot's. */
function aboveHeader(row: number, cells: readonly unknown[], state: State): void {
  state.setAside.push({ row, reason: "stands above the header" });
  state.heading = headingIn(cells) ?? state.heading;
}

function readRow(row: number, cells: readonly unknown[], state: State, source: BodySource): void {
  const reason = notAReading(row, cells, state, source);
  if (reason !== undefined) {
    state.setAside.push({ row, reason });
    return;
  }
  const read = source.reader.read(row);
  if (!read.holds) {
    state.setAside.push(nothingIn(read, cells, source.columns));
    return;
  }
  read.draft.vessel ??= state.heading;
  const problems = takeDayAbove(read, state.above, state.rows);
  state.above = read;
  state.rows.push(read.draft);
  state.problems.push(...problems);
}

/** Why a filled row is no row of readings; `undefined` when it may be one. */
function notAReading(row: number, cells: readonly unknown[], state: State, source: BodySource): string | undefined {
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
  state: State,
  { grid, columns }: BodySource,
): string | undefined {
  const dated = columns.some(({ column, quantity }) => quantity === "date" && !isBlank(cells[column]));
  const earlier = dated ? state.repeats(row, state.heading) : undefined;
  return earlier === undefined ? undefined : `repeats row ${rowIn(grid, earlier)} in every cell`;
}

function nothingIn(
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

/** What is said of a cell already is not said twice. */
function withoutDoubts(found: readonly CellProblem[], said: readonly CellProblem[]): CellProblem[] {
  if (found.length === 0) return [];
  const cells = new Set(said.map(({ row, column }) => `${row},${column}`));
  return found.filter(({ row, column, used }) => !used || !cells.has(`${row},${column}`));
}

/** Each name once, over the rows of its pot: a merged cell leaves the rows below it blank. */
function fillVessels(state: State, columns: readonly ColumnReading[]): void {
  const column = columns.find(({ read, quantity }) => read && quantity === "vessel");
  const named = state.rows.filter(({ vessel }) => vessel !== undefined);
  const names = new Set(named.map(({ vessel }) => vessel));
  const isMerged =
    names.size === named.length && named.length * 2 <= state.rows.length && state.rows[0]?.vessel !== undefined;
  if (column === undefined || !isMerged) return;
  let above: string | undefined;
  for (const draft of state.rows) {
    if (draft.vessel !== undefined) above = draft.vessel;
    else if (above !== undefined) {
      draft.vessel = above;
      state.problems.push({
        row: draft.row,
        column: column.column,
        used: true,
        reason: `no pot named: taken for ${quoted(above)} above`,
      });
    }
  }
}

function nameVessels(state: State, columns: readonly ColumnReading[]): string[] {
  const column = columns.find(({ read, quantity }) => read && quantity === "vessel")?.column ?? 0;
  const typed = new Map<number, string>();
  for (const { row, vessel } of state.rows) if (vessel !== undefined) typed.set(row, vessel);
  const { names, joined } = joinVessels(typed);
  for (const draft of state.rows) if (draft.vessel !== undefined) draft.vessel = names.get(draft.vessel);
  for (const { row, reason } of joined) state.problems.push({ row, column, used: true, reason });
  return [...new Set(state.rows.flatMap(({ vessel }) => vessel ?? []))];
}
