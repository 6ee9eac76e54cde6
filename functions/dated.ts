import { type Dated, days as dayNumber, quantities, Refusal, sheetDate } from "../src/index";
import { type Cells, content, numberIn, reading, series, shapeOf } from "./cells";

/** Beyond any reading of a log in any of its units; uS/cm and ppm end at 200,000. */
const largestValue = 1_000_000;

/** Day numbers counted from a flush stay far below this, the first believable date of a sheet. */
const [firstDate] = quantities.sheetDate.plausible;

/**
 * Readings and their dates, side by side; a row without its date or its value is passed over. Among day numbers 0 is
 * the day they are counted from; among dates it is a blank cell of the desktop host.
 */
export function datedReadings(dates: Cells | null, values: Cells | null): Dated[] {
  const days = series({ cells: dates, read: dateIn, called: "dates" });
  const read = series(reading(values, anyValue, "value"));
  if (days.length !== read.length) {
    throw new Refusal("impossible", {
      quantity: `dates of ${shapeOf(dates ?? [])} beside values of ${shapeOf(values ?? [])} cells`,
      allowed: "of the same length",
    });
  }
  const zeroIsADay = days.some((day) => day !== undefined && day > 0) && days.every((day) => (day ?? 0) < firstDate);
  return days.flatMap((day, row): Dated[] => {
    const value = read[row];
    return day === undefined || value === undefined || (day === 0 && !zeroIsADay) ? [] : [{ day, value }];
  });
}

/** A date as the sheet keeps it, a serial number; a date typed as text has no one meaning and is refused. */
export function dateIn(cell: unknown): number | undefined {
  const value = content(cell);
  if (typeof value === "string" && Number.isNaN(Number(value))) {
    const next = "enter it as a date the sheet understands; it then stands to the right of its cell";
    throw new Refusal("not-a-number", { quantity: "date", given: value, next });
  }
  const day = numberIn(cell, "date");
  if (day === undefined) return undefined;
  return day >= 0 && day < 1 ? dayNumber(day) : sheetDate(day, "date");
}

/** One value of a series, whatever it measures. Written so that NaN fails too. */
export function anyValue(value: number, called: string): number {
  if (Math.abs(value) <= largestValue) return value;
  throw new Refusal("impossible", {
    quantity: called,
    given: value,
    allowed: `between -${largestValue} and ${largestValue}`,
  });
}
anyValue.physical = [-largestValue, largestValue] as const;
