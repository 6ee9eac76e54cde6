import { type LogAnswers } from "../src/index";
import { type Choices } from "./choices";

/** The answers as the log reader wants them: by column of the grid, here found again by header. */
export function answersFor(choices: Choices, headers: readonly string[]): LogAnswers {
  const columns = Object.fromEntries(
    headerKeys(headers).flatMap((key, column) => {
      const answer = Object.hasOwn(choices.columns, key) ? choices.columns[key] : undefined;
      return answer === undefined ? [] : [[column, answer] as const];
    }),
  );
  const { ppmScale, ecUnit, volumeUnit, temperatureUnit, dateOrder, headerRow } = choices;
  const given = Object.entries({ ppmScale, ecUnit, volumeUnit, temperatureUnit, dateOrder, headerRow });
  return { columns, ...Object.fromEntries(given.filter(([, answer]) => answer !== undefined)) };
}

/** A name for each column that outlives its moving: its header, numbered where headers repeat. */
export function headerKeys(headers: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return headers.map((header) => {
    const name = header.trim().toLowerCase();
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count === 1 ? name : `${name} #${count}`;
  });
}
