import { readDates } from "../dates/dates";
import { type Draft, emptyDraft, holdsAnything, putReading, type RowRead } from "./draft";
import { type CellReader, noteReader, plantReader, vesselReader } from "./word-readers";
import { type LogQuantity } from "../log";
import { plantLookOf } from "./plant-cell";
import { type MeasureCell, type MeasureColumn, measureCell } from "./measure-cell";
import {
  type BySide,
  type CellProblem,
  type ColumnReading,
  type DateOrder,
  type LogAnswers,
  type LogGrid,
} from "../reading";
import { isHoursOnly, partOfDayIn, putDay, putTime, timeReader } from "../dates/row-moment";
import { sidesIn } from "../columns/side-columns";
import { isDateFormat } from "../columns/number-format";
import { type ColumnSample, usualIn } from "../columns/sample";
import { dropSwapped } from "./swapped";
import { readOnce } from "../../cells/read-once";
import { isBlank, quoted } from "../../cells/text";

/** A log that names parts of the day does so from its first rows on. */
const rowsLookedAt = 50;

export interface RowReader {
  readonly read: (row: number) => RowRead;
  readonly dateOrderOpen: boolean;
}

export interface RowSource {
  readonly grid: LogGrid;
  readonly firstRow: number;
  readonly columns: readonly ColumnReading[];
  readonly samples: readonly ColumnSample[];
  readonly answers: LogAnswers;
  readonly statedOrder: DateOrder | undefined;
}

/** Makes the reader of one log's rows: every column's way of reading is settled once, before the first row. */
export function rowReader(source: RowSource): RowReader {
  const { grid, columns, firstRow, answers } = source;
  const of = (quantity: LogQuantity): ColumnReading | undefined =>
    columns.find((column) => column.read && column.quantity === quantity);
  const readers = columns
    .filter(({ read }) => read)
    .map((column) => ({ column: column.column, readInto: cellReader(column, source) }));
  const date = of("date");
  const dates =
    date === undefined ? undefined : readDates(grid, date.column, firstRow, answers.dateOrder ?? source.statedOrder);
  const time = of("time");
  const timeOf = timeReader(time !== undefined && isHoursOnly(grid, time.column, firstRow));
  const firstRows = grid.cells.slice(firstRow, firstRow + rowsLookedAt);
  const hasPartsOfDay = firstRows.some((cells) => partOfDayIn(cells) !== undefined);
  const read = (row: number): RowRead => {
    const cells = grid.cells[row] ?? [];
    const found: { draft: Draft; problems: CellProblem[] } = { draft: emptyDraft(row), problems: [] };
    let holds = false;
    for (const { column, readInto } of readers) if (readInto(cells[column], row, found)) holds = true;
    if (dropSwapped(found, columns)) holds = holdsAnything(found.draft);
    if (date !== undefined && dates !== undefined) putDay(dates.at(row), date.column, found);
    const clock = time === undefined ? undefined : timeOf(cells[time.column]);
    if (time !== undefined) putTime(clock, cells[time.column], time.column, found);
    const isOpen = date !== undefined && found.draft.day === undefined;
    return {
      draft: found.draft, problems: found.problems, holds,
      clock: clock !== undefined && "part" in clock ? clock.part : undefined,
      partOfDay: isOpen || hasPartsOfDay ? partOfDayIn(cells) : undefined,
    };
  };
  return { read, dateOrderOpen: dates?.asks === true };
}

function cellReader(column: ColumnReading, source: RowSource): CellReader {
  if (column.bySide !== undefined) return bySideReader(column, column.bySide, source);
  if (column.quantity === "notes") return noteReader();
  if (column.quantity === "vessel") return vesselReader();
  const look = plantLookOf(column.quantity);
  if (look !== undefined) return plantReader(column.column, look);
  const put = putReading[column.quantity];
  return put === undefined ? () => false : readingReader(column, put, source);
}

/** Where rows of input and of runoff take turns: each row's cell goes to its own side. */
function bySideReader(column: ColumnReading, { column: says, ...sides }: BySide, source: RowSource): CellReader {
  const readers = {
    input: cellReader({ ...column, bySide: undefined, quantity: sides.input }, source),
    runoff: cellReader({ ...column, bySide: undefined, quantity: sides.runoff }, source),
  };
  const sideAt = sidesIn(source.grid, says);
  return (cell, row, read) => {
    if (isBlank(cell)) return false;
    const side = sideAt(row);
    if (side !== undefined) return readers[side](cell, row, read);
    const word = source.grid.cells[row]?.[says];
    const said = isBlank(word) ? "nothing" : quoted(word);
    const reason = `${said} in column ${source.columns[says]?.letters ?? ""}: neither input nor runoff`;
    read.problems.push({ row, column: column.column, used: false, reason });
    return false;
  };
}

function readingReader(
  { column, quantity, unit }: ColumnReading,
  put: (draft: Draft, value: number) => void,
  source: RowSource,
): CellReader {
  const measure =
    (["EC", "pH", "volume", "temperature", "humidity"] as const).find((word) => quantity.endsWith(word)) ?? "EC";
  const scale = unit?.startsWith("ppm ") === true ? Number(unit.slice("ppm ".length)) : source.answers.ppmScale;
  const sample = source.samples[column];
  const median = sample === undefined ? undefined : usualIn(sample, unit ?? "");
  const how: MeasureColumn = { measure, unit: unit ?? "", median, ppmScale: scale };
  const formats = source.grid.numberFormats;
  const readText = readOnce((text) => measureCell(text, how, false));
  const readNumber = (cell: number, format: string | undefined): MeasureCell => {
    const isShare = measure === "humidity" && unit === "%" && format?.includes("%") === true;
    return measureCell(isShare ? cell * 100 : cell, how, isDateFormat(format));
  };
  return (cell, row, { draft, problems }) => {
    if (isBlank(cell)) return false;
    const found =
      typeof cell === "string" ? readText(cell)
      : typeof cell === "number" ? readNumber(cell, formats?.[row]?.[column])
      : measureCell(cell, how, false);
    if (found === undefined) return false;
    const value = typeof found === "number" ? found : found.value;
    if (typeof found !== "number") problems.push({ row, column, used: value !== undefined, reason: found.reason });
    if (value === undefined) {
      const isFigure = typeof cell === "number" && typeof found !== "number" && (measure === "EC" || measure === "pH");
      if (isFigure) draft.unread = [...(draft.unread ?? []), `${quantity}: ${found.reason}`];
      return false;
    }
    put(draft, value);
    return true;
  };
}
