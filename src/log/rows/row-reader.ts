import { readDates } from "../dates/dates";
import { type Draft, emptyDraft, holdsAnything, putReading, type RowRead } from "./draft";
import { type LogEvent, type LogQuantity, type PlantLook } from "../log";
import { plantCell, plantLookOf } from "./plant-cell";
import { type MeasureColumn, measureCell } from "./measure-cell";
import { eventsIn } from "../notes/notes";
import {
  type BySide,
  type CellProblem,
  type ColumnReading,
  type DateOrder,
  type LogAnswers,
  type LogGrid,
} from "../reading";
import { clockOf, isHoursOnly, partOfDayIn, putDay, putTime } from "../dates/row-moment";
import { sidesIn } from "../columns/side-columns";
import { type ColumnSample, isDateFormat, usualIn } from "../columns/sample";
import { dropSwapped } from "./swapped";
import { isBlank, plain, quoted } from "../../cells/text";
import { vesselText } from "./vessels";
import { missingWords } from "../../cells/missing-words";

/** A log that names parts of the day does so from its first rows on. */
const rowsLookedAt = 50;

/** Puts one cell into the row, or says why not. */
type CellReader = (
  cell: unknown,
  row: number,
  read: { readonly draft: Draft; readonly problems: CellProblem[] },
) => boolean;

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
    .map((column) => [column.column, cellReader(column, source)] as const);
  const date = of("date");
  const dates =
    date === undefined ? undefined : readDates(grid, date.column, firstRow, answers.dateOrder ?? source.statedOrder);
  const time = of("time");
  const hoursOnly = time !== undefined && isHoursOnly(grid, time.column, firstRow);
  const hasPartsOfDay = grid.cells.slice(firstRow, firstRow + rowsLookedAt).some((cells) => partOfDayIn(cells) > 0);
  const read = (row: number): RowRead => {
    const cells = grid.cells[row] ?? [];
    const found: { draft: Draft; problems: CellProblem[] } = { draft: emptyDraft(row), problems: [] };
    let holds = false;
    for (const [column, reader] of readers) if (reader(cells[column], row, found)) holds = true;
    if (dropSwapped(found, columns)) holds = holdsAnything(found.draft);
    if (date !== undefined && dates !== undefined) putDay(dates.at(row), date.column, found);
    if (time !== undefined) putTime(cells[time.column], time.column, hoursOnly, found);
    const isOpen = date !== undefined && found.draft.day === undefined;
    return {
      draft: found.draft, problems: found.problems, holds,
      clock: time === undefined ? undefined : clockOf(cells[time.column], hoursOnly),
      partOfDay: isOpen || hasPartsOfDay ? partOfDayIn(cells) : 0,
    };
  };
  return { read, dateOrderOpen: dates?.asks === true };
}

function cellReader(column: ColumnReading, source: RowSource): CellReader {
  if (column.bySide !== undefined) return bySideReader(column, column.bySide, source);
  if (column.quantity === "notes") return noteReader();
  if (column.quantity === "vessel") return putVessel;
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
  return (cell, row, { draft, problems }) => {
    if (isBlank(cell)) return false;
    const format = formats?.[row]?.[column];
    const share = measure === "humidity" && unit === "%" && format?.includes("%") === true && typeof cell === "number";
    const found = measureCell(share ? cell * 100 : cell, how, typeof cell === "number" && isDateFormat(format));
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

function plantReader(column: number, look: keyof PlantLook): CellReader {
  return (cell, row, { draft, problems }) => {
    if (isBlank(cell)) return false;
    const found = plantCell(cell);
    if (found === undefined) return false;
    if ("reason" in found) problems.push({ row, column, used: false, reason: found.reason });
    else draft.plant = { ...draft.plant, [look]: found.value };
    return "value" in found;
  };
}

function noteReader(): CellReader {
  const known = new Map<string, readonly LogEvent[]>();
  return (cell, _row, { draft }) => {
    const text = typeof cell === "string" ? cell.trim() : typeof cell === "number" ? String(cell) : "";
    if (text === "" || missingWords.has(plain(text))) return false;
    const events = known.get(text) ?? eventsIn(text);
    known.set(text, events);
    draft.notes = draft.notes === undefined ? text : `${draft.notes}; ${text}`;
    draft.events = draft.events.concat(events.filter(({ kind }) => !draft.events.some((event) => event.kind === kind)));
    return true;
  };
}

const putVessel: CellReader = (cell, _row, { draft }) => {
  const text = vesselText(cell);
  if (text !== "" && !missingWords.has(plain(text)))
    draft.vessel = draft.vessel === undefined ? text : `${draft.vessel} ${text}`;
  return false;
};
