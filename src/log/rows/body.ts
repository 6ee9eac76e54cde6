import { isBlank } from "../../cells/text";
import { columnOf } from "../columns/holds";
import { sidesIn } from "../columns/side-columns";
import { dateDoubts } from "../dates/order-checks";
import { type CellProblem, type LogReading } from "../reading";
import { type BodySource, type BodyState } from "./body-state";
import { dropFoot } from "./foot";
import { joinSides } from "./join-sides";
import { fillVessels, nameVessels } from "./name-vessels";
import { noReadingFinder, nothingIn } from "./no-reading";
import { dropOutliers } from "./outliers";
import { repeatFinder } from "./repeats";
import { headingIn } from "./row-kinds";
import { takeDayAbove } from "./undated";

type Body = Pick<LogReading, "rows" | "setAside" | "problems" | "blankRows" | "vessels">;

/** Reads every row that is not a header: used, set aside with its reason, or blank; never lost. */
export function readBody(source: BodySource): Body {
  const { grid, header } = source;
  const state: BodyState = {
    rows: [],
    setAside: [],
    problems: [],
    repeats: repeatFinder(grid.cells),
    blankRows: 0,
    heading: undefined,
    above: undefined,
    ended: false,
  };
  const whyNoReading = noReadingFinder(source, state);
  const headerRows = new Set(header?.rows);
  const first = header?.rows[0] ?? 0;
  grid.cells.forEach((cells, row) => {
    if (headerRows.has(row)) return;
    if (cells.every(isBlank)) state.blankRows += 1;
    else if (row < first) aboveHeader(row, cells, state);
    else {
      const reason = whyNoReading(row, cells);
      if (reason === undefined) readRow(row, cells, state, source);
      else state.setAside.push({ row, reason });
    }
  });
  joinRowsOfSides(state, source);
  dropFoot(state, (row) => grid.cells[row - 1]?.every(isBlank) ?? false);
  fillVessels(state, source.columns);
  const vessels = nameVessels(state, source.columns);
  const said = withOutliers(dropOutliers(state.rows, source.columns), state.problems);
  const column = columnOf(source.columns, "date");
  const doubts = dateDoubts(state.rows).map(({ row, reason }) => ({ row, column, used: true, reason }));
  const problems = [...said, ...doubts].sort((a, b) => a.row - b.row || a.column - b.column);
  return {
    rows: state.rows,
    setAside: state.setAside.sort((a, b) => a.row - b.row),
    problems,
    blankRows: state.blankRows,
    vessels,
  };
}

function joinRowsOfSides(state: BodyState, { columns, grid }: BodySource): void {
  const says = columns.find(({ bySide }) => bySide !== undefined)?.bySide?.column;
  if (says !== undefined) joinSides(state, sidesIn(grid, says));
}

/** A title; where it is a pot's name, the rows below are that pot's. */
function aboveHeader(row: number, cells: readonly unknown[], state: BodyState): void {
  state.setAside.push({ row, reason: "stands above the header" });
  state.heading = headingIn(cells) ?? state.heading;
}

function readRow(row: number, cells: readonly unknown[], state: BodyState, source: BodySource): void {
  const read = source.reader.read(row);
  if (!read.holds) {
    state.setAside.push(nothingIn(read, cells, source.columns));
    return;
  }
  read.draft.vessel ??= state.heading;
  for (const problem of takeDayAbove(read, state.above, state.rows)) state.problems.push(problem);
  state.above = read;
  state.rows.push(read.draft);
}

/** What is said of a cell already is not said twice, and a cell that is left out is no longer one used with a doubt. */
function withOutliers(found: readonly CellProblem[], said: readonly CellProblem[]): readonly CellProblem[] {
  if (found.length === 0) return said;
  const place = ({ row, column }: CellProblem): string => `${row},${column}`;
  const leftOut = new Set(found.filter(({ used }) => !used).map(place));
  const kept = said.filter((problem) => !leftOut.has(place(problem)));
  const known = new Set(kept.map(place));
  return [...kept, ...found.filter((problem) => !known.has(place(problem)))];
}
