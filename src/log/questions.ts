import { type LogGrid, type LogQuestion, type LogQuestionKind } from "./reading";
import { rowIn } from "./sheet-place";

const ecUnits = ["mS/cm", "uS/cm", "ppm 500", "ppm 640", "ppm 700", "CF"];

/** The questions that several columns can wait for together. */
const unitQuestions: Partial<Record<LogQuestionKind, { readonly text: string; readonly choices: readonly string[] }>> =
  {
    "ppm scale": { text: "Which ppm scale does the meter show?", choices: ["500", "640", "700"] },
    "EC unit": { text: "Which unit are these EC figures in?", choices: ecUnits },
    "volume unit": { text: "Which unit are these volumes in?", choices: ["L", "mL", "gal", "qt", "fl oz"] },
    "temperature unit": { text: "Are these temperatures in C or F?", choices: ["C", "F"] },
    "date order": {
      text: "Which comes first in these dates, the day or the month?",
      choices: ["day first", "month first"],
    },
  };

export interface Asked {
  readonly column: number;
  readonly letters: string;
  readonly header: string;
}

/** One question for all columns that wait for the same answer. */
export function unitQuestion(kind: LogQuestionKind, columns: readonly Asked[]): LogQuestion {
  const { text, choices } = unitQuestions[kind] ?? { text: kind, choices: [] };
  const named = columns.map(({ letters, header }) => `${letters} "${header}"`).join(", ");
  return { kind, text: `${text} (${named})`, choices, columns: columns.map(({ column }) => column) };
}

/** What one column holds. */
export function columnQuestion(
  { column, letters, header }: Asked,
  why: string,
  choices: readonly string[],
): LogQuestion {
  const named = header === "" ? `Column ${letters}` : `Column ${letters} "${header}"`;
  return {
    kind: "what is this column",
    text: `${named}: what does it hold? ${why}.`,
    choices: [...choices, "other"],
    columns: [column],
  };
}

/** No row names the columns. */
export const headerQuestion = (grid: LogGrid): LogQuestion => ({
  kind: "which row is the header",
  text: "No row names the columns. Which row is the header, or is there none?",
  choices: [...Array.from({ length: Math.min(grid.cells.length, 5) }, (_, row) => `row ${rowIn(grid, row)}`), "none"],
  columns: [],
});

export const layoutQuestion = (text: string): LogQuestion => ({ kind: "layout", text, choices: [], columns: [] });
