import { colToLetter } from "hucre";
import { type Entry, sheetDay } from "../scenario/diary";
import { address } from "../xlsx/address";
import { type Cell, type ConditionalFormat, type SheetSpec, type Validation } from "../xlsx/spec";
import { type StyleName } from "../xlsx/style-table";
import { formula, gridOf, typed } from "./grid";

/** The name of the Table on every log sheet. */
export const tableName = "BenchLog";

/** The cell of the same row in another column of the log, as the host writes it. */
const inRow = (column: string): string => `${tableName}[[#This Row],[${column}]]`;

/** A column of the log: typed by the grower from an entry, or calculated. */
interface LogColumn {
  readonly header: string;
  readonly width: number;
  readonly style: StyleName;
  readonly read?: (entry: Entry) => string | number | undefined;
  readonly formula?: string;
}

/** The host may hand a blank cell over as 0, and 0 litres is a volume: a blank is kept blank before our function is asked. */
const leached = `IF(ISBLANK(${inRow("Runoff L")}),"",RUNOFF.LEACHFRACTION(${inRow("Runoff L")},${inRow("Feed L")}))`;

/** Input EC stands in C and runoff EC in D: the README's first formula counts on it. */
export const logColumns: readonly LogColumn[] = [
  { header: "Date", width: 11.5, style: "date", read: sheetDay },
  { header: "Pot", width: 10, style: "plain", read: (entry) => entry.vessel },
  { header: "Feed EC", width: 8, style: "ec", read: (entry) => entry.feedEc },
  { header: "Runoff EC", width: 8, style: "ec", read: (entry) => entry.runoffEc },
  { header: "Feed pH", width: 8, style: "ph", read: (entry) => entry.feedPh },
  { header: "Runoff pH", width: 8, style: "ph", read: (entry) => entry.runoffPh },
  { header: "Feed L", width: 8, style: "litres", read: (entry) => entry.feedLitres },
  { header: "Runoff L", width: 8, style: "litres", read: (entry) => entry.runoffLitres },
  { header: "Solution C", width: 9, style: "celsius", read: (entry) => entry.celsius },
  { header: "Notes", width: 50, style: "note", read: (entry) => entry.note },
  { header: "Salt ratio", width: 8, style: "ratio", formula: `RUNOFF.SALTRATIO(${inRow("Runoff EC")},${inRow("Feed EC")})` },
  { header: "pH shift", width: 8, style: "shift", formula: `RUNOFF.PHSHIFT(${inRow("Runoff pH")},${inRow("Feed pH")})` },
  { header: "Leached", width: 9, style: "share", formula: leached },
  {
    header: "Flag",
    width: 52,
    style: "words",
    formula: `RUNOFF.ROWFLAG(${["Feed pH", "Feed EC", "Runoff pH", "Runoff EC"].map(inRow).join(",")},Band,RatioLimit)`,
  },
];

const columnOf = (header: string): string => colToLetter(logColumns.findIndex((column) => column.header === header));

/** The log of one bench as a Table from A1, with the calculated columns at its right. */
export function logSheet(entries: readonly Entry[]): SheetSpec {
  const heading = logColumns.map(({ header, style }) => typed(header, ["plain", "note", "words"].includes(style) ? "headingLeft" : "heading"));
  const rows = entries.map((entry) => logColumns.map((column) => logCell(column, entry)));
  const last = address({ row: entries.length, column: logColumns.length - 1 });
  return {
    name: "Log",
    cells: gridOf([heading, ...rows]),
    widths: logColumns.map(({ width }) => width),
    tables: [{ name: tableName, ref: `A1:${last}`, columns: logColumns.map(({ header, formula: text }) => ({ name: header, formula: text })) }],
    formats: flagFormats(entries.length + 1),
    validations: logValidations(entries.length + 1),
    heights: new Map([[1, 32]]),
    frozen: { rows: 1, columns: 2 },
    printedHeader: "1:1",
  };
}

function logCell(column: LogColumn, entry: Entry): Cell | undefined {
  if (column.formula !== undefined) return formula(column.formula, column.style);
  const value = column.read?.(entry);
  return value === undefined ? undefined : typed(value, column.style);
}

/** Marks by the flag's text; a reading to be checked looks different from a reading outside the band. */
function flagFormats(lastRow: number): ConditionalFormat[] {
  const flag = columnOf("Flag");
  const range = `${flag}2:${flag}${lastRow}`;
  return [
    { range, when: `ISNUMBER(SEARCH("check reading",${flag}2))`, look: "questioned" },
    { range, when: `AND(${flag}2<>"",${flag}2<>"in band")`, look: "marked" },
  ];
}

function logValidations(lastRow: number): Validation[] {
  const over = (headers: readonly string[]): string => headers.map((header) => `${columnOf(header)}2:${columnOf(header)}${lastRow}`).join(" ");
  return [
    { range: over(["Feed EC", "Runoff EC"]), allowed: { between: [0, 20] }, hint: "EC in mS/cm at 25 C, 0 to 20" },
    { range: over(["Feed pH", "Runoff pH"]), allowed: { between: [0, 14] }, hint: "pH, 0 to 14" },
    { range: over(["Feed L", "Runoff L"]), allowed: { between: [0, 200] }, hint: "litres, 0 to 200" },
    { range: over(["Solution C"]), allowed: { between: [0, 45] }, hint: "solution temperature in C" },
  ];
}
