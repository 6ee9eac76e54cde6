import { readdirSync, readFileSync } from "node:fs";
import { type LogGrid } from "../../src/index";
import { type LoggerPlan } from "./logger";

/** A log as a messy keeper writes it, and what a person would say of it; rows and cells as the sheet numbers them. */
export interface MessySheet {
  readonly name: string;
  readonly why: string;
  /** Truth of each column, parted by "|": see `truth.ts`. */
  readonly columns: string;
  /** A row a line, its cells parted by "|"; "@2025-05-01" is a date of the sheet, a bare figure a number. */
  readonly lines?: readonly string[];
  /** A long file made by the generator in place of `lines`. */
  readonly logger?: LoggerPlan;
  /** Decimal commas in the text. */
  readonly comma?: boolean;
  /** Figures stay text, as in a file of text. */
  readonly keepText?: boolean;
  /** Rows of the header; 1 when not said. */
  readonly header?: readonly number[];
  /** Rows that are no reading. */
  readonly aside?: readonly number[];
  /** Rows that may be used as they are, or set aside with a reason. */
  readonly may?: readonly number[];
  /** The days of the readings, in order, where the cells are not ISO or the sheet's dates; null: none can be known. */
  readonly days?: readonly (string | null)[];
  /** Which pot each of these rows is, where the cells do not say it word for word. */
  readonly pots?: readonly (string | number)[];
  /** Values of cells that are no plain figure, in mS/cm, L, C or %; null: no value to be used in silence. */
  readonly cells?: Readonly<Record<string, number | null>>;
  /** Cells of which something must be said. */
  readonly told?: string;
  /** Nothing of it is a log with a header: refused in words, no row used. */
  readonly refused?: boolean;
  /** Feed and runoff take turns: which column says so, and its words. */
  readonly bySide?: { readonly column: string; readonly input: string; readonly runoff: string };
  /** No row can have a day, and that must be said. */
  readonly asksDays?: boolean;
  /** A question must name this column of the sheet. */
  readonly asksNaming?: string;
  readonly rowNumbers?: readonly number[];
  readonly columnNumbers?: readonly number[];
  /** A workbook of several tabs, each a sheet of its own. */
  readonly tabs?: Readonly<Record<string, Omit<MessySheet, "name" | "why" | "tabs">>>;
}

const folder = `${import.meta.dirname}/messy`;
const filesOf = (path: string): string[] => readdirSync(path).filter((file) => file.endsWith(".json"));
const day0 = 25_569;

/** Every messy sheet, a tab a sheet, named by its class. */
export function messySheets(): MessySheet[] {
  return filesOf(folder).flatMap((file) => {
    const kind = file.slice(0, -".json".length);
    const sheets = JSON.parse(readFileSync(`${folder}/${file}`, "utf8")) as MessySheet[];
    return sheets.flatMap((sheet) => tabsOf({ ...sheet, name: `${kind}: ${sheet.name}` }));
  });
}

function tabsOf(sheet: MessySheet): MessySheet[] {
  if (sheet.tabs === undefined) return [sheet];
  return Object.entries(sheet.tabs).map(([tab, one]) => {
    return { ...one, name: `${sheet.name}, tab ${tab}`, why: sheet.why };
  });
}

/** A date, or a date and clock, as a serial by the platform's own calendar. */
export function serial(text: string): number {
  const [date = "", clock = "00:00"] = text.split(" ");
  return Date.parse(`${date}T${clock}${clock.length === 5 ? ":00" : ""}Z`) / 86_400_000 + day0;
}

const isDate = (text: string): boolean => text.startsWith("@");

function cellOf(text: string, keepText: boolean): unknown {
  if (isDate(text)) return serial(text.slice(1));
  return !keepText && /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}

const formatOf = (text: string): string => {
  if (!isDate(text)) return "General";
  return text.includes(":") ? "yyyy-mm-dd hh:mm" : "yyyy-mm-dd";
};

/** The grid that a host would hand over for the lines. */
export function gridOfLines({ lines = [], keepText = false, rowNumbers, columnNumbers }: MessySheet): LogGrid {
  const texts = lines.map((line) => line.split("|"));
  return {
    cells: texts.map((row) => row.map((text) => cellOf(text, keepText))),
    numberFormats: texts.map((row) => row.map(formatOf)),
    ...(rowNumbers === undefined ? {} : { rowNumbers }),
    ...(columnNumbers === undefined ? {} : { columnNumbers }),
  };
}
