import { type LogRow } from "./log";
import { type ColumnReading, type LogGrid, type LogQuestion, type LogReading } from "./reading";
import { lettersIn, rowIn } from "./sheet-place";

/** Rows are named up to this many; more are counted. */
const mostNamed = 4;

export interface RemarkSource {
  readonly grid: LogGrid;
  readonly rows: readonly LogRow[];
  readonly columns: readonly ColumnReading[];
  readonly questions: readonly LogQuestion[];
}

/** What is to be said of the log as a whole, beside what is judged from it: sentences, the gravest first. */
export function remarksOn({ grid, rows, columns, questions }: RemarkSource): string[] {
  return [...ofDates(grid, rows, questions), ...ofHidden(grid, columns)];
}

/** Rows without a day are in no trend and no judgement of a log that has days: nobody can tell where they belong. */
function ofDates(grid: LogGrid, rows: readonly LogRow[], questions: readonly LogQuestion[]): string[] {
  const undated = rows.filter(({ day }) => day === undefined);
  if (undated.length === 0 || questions.some(({ kind }) => kind === "date order")) return [];
  if (undated.length === rows.length)
    return ["No row has a date that can be read: the readings stand in the order of their rows."];
  const named = undated.slice(0, mostNamed).map(({ row }) => rowIn(grid, row)).join(", ");
  const more = undated.length > mostNamed ? ` and ${undated.length - mostNamed} more` : "";
  const [rowsHave, they] = undated.length === 1 ? ["1 row has", "it is"] : [`${undated.length} rows have`, "they are"];
  return [
    `${rowsHave} no date that can be read (${undated.length === 1 ? "row" : "rows"} ${named}${more}): ${they} left out of what is judged.`,
  ];
}

/** Which columns wait for an answer, in a sentence; none where no question is open. */
export function waitingIn({ columns, questions }: Pick<LogReading, "columns" | "questions">): string[] {
  const waiting = new Set(questions.flatMap((question) => question.columns));
  const letters = columns.filter(({ column, read }) => waiting.has(column) && !read).map((column) => column.letters);
  if (letters.length === 0) return [];
  return [
    `${letters.length === 1 ? "Column" : "Columns"} ${letters.join(", ")} ${letters.length === 1 ? "waits" : "wait"} for an answer and ${letters.length === 1 ? "is" : "are"} not read yet.`,
  ];
}

function ofHidden(grid: LogGrid, columns: readonly ColumnReading[]): string[] {
  const { hiddenRows = 0, hiddenColumns = [] } = grid;
  const rows =
    hiddenRows === 0 ? [] : [`${hiddenRows === 1 ? "1 hidden row is" : `${hiddenRows} hidden rows are`} not read.`];
  const read = columns.filter(({ column, read: isRead }) => isRead && hiddenColumns.includes(column));
  const named = read.map(({ column, quantity }) => `${lettersIn(grid, column)} (${quantity})`).join(", ");
  return read.length === 0 ? rows : [...rows, `Hidden columns are read too: ${named}.`];
}
