import { readBody } from "./rows/body";
import { readColumns } from "./columns/read-columns";
import { type ColumnHeader, columnHeader, findHeader, type Header } from "./columns/header-rows";
import { headerMeaning } from "./columns/header-meaning";
import { otherLayout } from "./columns/layout";
import { logQuantities } from "./log";
import { columnQuestion, headerQuestion, layoutQuestion, unitQuestion } from "./questions";
import { type LogAnswers, type LogGrid, type LogQuestion, type LogReading } from "./reading";
import { remarksOn } from "./remarks";
import { rowReader } from "./rows/row-reader";
import { sampleColumn } from "./columns/sample";
import { lettersIn } from "./sheet-place";
import { type WrittenUnit } from "../cells/units";
import { isBlank } from "../cells/text";

/**
 * Reads a grower's log as it is kept: raw cells in, rows of typed readings out, and what is to be asked.
 *
 * Feeds the verdict, the timeline and every list of rows. What the sheet does not tell (a ppm scale, which EC is the
 * runoff's) is asked, and the column waits: a reading left out is seen, a wrong one is not.
 *
 * Formula:  rowsUsed + setAside + blankRows + headerRows = all rows of the grid
 * Source:   common practice; docs/log-sheets.md says what is read, asked and set aside
 *
 * @param grid the sheet's cells, a row an array
 * @param answers what a person has answered so far
 * @example readLog({ cells: [["Date", "Runoff EC"], [45383, 2.4]] }).rows[0].runoffEc // 2.4
 */
export function readLog(grid: LogGrid, answers: LogAnswers = {}): LogReading {
  const layout = answers.headerRow === undefined && answers.columns === undefined ? otherLayout(grid) : undefined;
  if (layout !== undefined) return unread(grid, [layoutQuestion(layout)], "the readings run across the sheet");
  const header = findHeader(grid, answers.headerRow);
  const answered = Object.keys(answers.columns ?? {}).length > 0;
  if (header === undefined && !answered) return unread(grid, withoutHeader(grid, answers), "no row names the columns");
  return readUnder(grid, header, answers);
}

function readUnder(grid: LogGrid, header: Header | undefined, answers: LogAnswers): LogReading {
  const firstRow = Math.max(-1, ...(header?.rows ?? [])) + 1;
  const width = widthOf(grid);
  const headers: ColumnHeader[] = Array.from({ length: width }, (_, column) =>
    header === undefined ? noHeader(grid, column) : columnHeader(grid, header, column),
  );
  const looks = headers.map((header, column) =>
    ({ header, sample: sampleColumn(grid, column, firstRow, dividesThousands(header.meaning.unit)) }));
  const samples = looks.map(({ sample }) => sample);
  const { columns, questions } = readColumns({ looks, answers, grid, firstRow });
  const date = columns.find(({ quantity, read }) => read && quantity === "date");
  const statedOrder = date === undefined ? undefined : headers[date.column]?.meaning.dateOrder;
  const reader = rowReader({ grid, firstRow, columns, samples, answers, statedOrder });
  const open = reader.dateOrderOpen && date !== undefined ? [unitQuestion("date order", [date])] : [];
  const body = readBody({ grid, header, headers, columns, reader });
  const asked = [...questions, ...open];
  const remarks = remarksOn({ grid, rows: body.rows, columns, questions: asked });
  return { headerRows: header?.rows ?? [], columns, questions: asked, remarks, ...body };
}

/** Units in which figures run in hundreds: a comma before three digits divides thousands there. */
const dividesThousands = (unit: WrittenUnit | undefined): boolean =>
  unit === "uS/cm" || unit === "ppm" || unit === "mL";

const noHeader = (grid: LogGrid, column: number): ColumnHeader => ({
  text: "",
  letters: lettersIn(grid, column),
  meaning: headerMeaning(""),
});

/** By a loop: a sheet can hold more rows than a call can take arguments. */
function widthOf(grid: LogGrid): number {
  let width = 0;
  for (const cells of grid.cells) width = Math.max(width, cells.length);
  return width;
}

/** A log that cannot be read yet: every filled row set aside for the same reason. */
function unread(grid: LogGrid, questions: readonly LogQuestion[], reason: string): LogReading {
  const setAside = grid.cells.flatMap((cells, row) => (cells.every(isBlank) ? [] : [{ row, reason }]));
  const blankRows = grid.cells.length - setAside.length;
  const columns = Array.from({ length: widthOf(grid) }, (_, column) => ({
    column,
    letters: lettersIn(grid, column),
    header: "",
    quantity: "other" as const,
    unit: "" as const,
    why: reason,
    read: false,
  }));
  return { headerRows: [], columns, rows: [], setAside, problems: [], blankRows, questions, remarks: [], vessels: [] };
}

/** Asks for the header row, or, when there is none, what each filled column holds. */
function withoutHeader(grid: LogGrid, answers: LogAnswers): LogQuestion[] {
  const filled = Array.from({ length: widthOf(grid) }, (_, column) => column).filter(
    (column) => sampleColumn(grid, column, 0).filled > 0,
  );
  if (filled.length === 0) return [];
  const ask = answers.headerRow === undefined ? [headerQuestion(grid)] : [];
  return [
    ...ask,
    ...filled.map((column) =>
      columnQuestion(
        { column, letters: lettersIn(grid, column), header: "" },
        "No row names it",
        logQuantities.slice(0, -1),
      ),
    ),
  ];
}
