import { Refusal, type RootZoneReading, type Verdict } from "../src/index";
import { type Cells, reading, series } from "./cells";

/** A reading that cannot be is judged with the rest ("check the meter"), not refused. */
export const asGiven = Object.assign((value: number): number => value, { physical: [0, Infinity] as const });

/**
 * Four columns of readings, side by side. A single blank cell, or an argument left empty, is a column that was not measured.
 *
 * @throws {Refusal} `impossible` when the columns differ in length
 */
export function rootZoneReadings(inputPh: Cells, inputEc: Cells, runoffPh: Cells, runoffEc: Cells): RootZoneReading[] {
  const columns = [
    series(reading(inputPh, asGiven, "input pH")),
    series(reading(inputEc, asGiven, "input EC")),
    series(reading(runoffPh, asGiven, "runoff pH")),
    series(reading(runoffEc, asGiven, "runoff EC")),
  ] as const;
  const lengths = columns.map(({ length }) => length);
  const rows = Math.max(...lengths);
  for (const column of columns) {
    if (column.length === rows || column.length === 0 || (column.length === 1 && column[0] === undefined)) continue;
    const allowed = "four of the same length: input pH, input EC, runoff pH, runoff EC";
    throw new Refusal("impossible", { quantity: `columns of ${lengths.join(", ")} readings`, allowed });
  }
  const [inPh, inEc, outPh, outEc] = columns;
  return Array.from({ length: rows }, (_, row) => ({ inputPh: inPh[row], inputEc: inEc[row], runoffPh: outPh[row], runoffEc: outEc[row] }));
}

export const isBlank = (row: RootZoneReading): boolean => Object.values(row).every((value) => value === undefined);

/** A verdict with all it says in one text: reasons, the rows it rests on, what to do next, when to measure again. */
export function inOneCell({ answer, reasons, next, measureAgain, restsOn }: Verdict): Pick<Verdict, "answer" | "reasons"> {
  const rows = restsOn.map((place) => place + 1).join(" and ");
  const restsOnRows = rows === "" ? [] : [`rests on ${restsOn.length === 1 ? "row" : "rows"} ${rows} of the range`];
  const because = [...new Set([...reasons, ...restsOnRows])].join("; ");
  return { answer, reasons: [`${because}. Next: ${next} Measure again: ${measureAgain}.`] };
}
