import { type Celsius, type Ec25, type Litres, type Percent, type Ph } from "../../quantities";
import { type LogEvent, type LogQuantity, type LogRow } from "../log";
import { type CellProblem } from "../reading";

/** A row while it is being read. */
export type Draft = { -readonly [Key in keyof LogRow]: LogRow[Key] };

const none: readonly LogEvent[] = [];

export const emptyDraft = (row: number): Draft => ({
  row,
  day: undefined,
  vessel: undefined,
  inputEc: undefined,
  inputPh: undefined,
  runoffEc: undefined,
  runoffPh: undefined,
  inputLitres: undefined,
  runoffLitres: undefined,
  solutionCelsius: undefined,
  airCelsius: undefined,
  humidityPercent: undefined,
  notes: undefined,
  events: none,
});

/** Whether a reading or a note is left in a row whose day is not read yet; a name alone is nothing to use. */
export const holdsAnything = (draft: Draft): boolean =>
  Object.entries(draft).some(
    ([key, value]) => !["row", "vessel", "events", "unread"].includes(key) && value !== undefined,
  );

/** Where each quantity goes; the values have been checked and stand in the engine's units. */
export const putReading: Partial<Record<LogQuantity, (draft: Draft, value: number) => void>> = {
  "input EC": (draft, value) => { draft.inputEc = value as Ec25; },
  "input pH": (draft, value) => { draft.inputPh = value as Ph; },
  "runoff EC": (draft, value) => { draft.runoffEc = value as Ec25; },
  "runoff pH": (draft, value) => { draft.runoffPh = value as Ph; },
  "input volume": (draft, value) => { draft.inputLitres = value as Litres; },
  "runoff volume": (draft, value) => { draft.runoffLitres = value as Litres; },
  "solution temperature": (draft, value) => { draft.solutionCelsius = value as Celsius; },
  "air temperature": (draft, value) => { draft.airCelsius = value as Celsius; },
  humidity: (draft, value) => { draft.humidityPercent = value as Percent; },
};

/** A row read: its draft, what is said about its cells, and whether it holds anything worth keeping. */
export interface RowRead {
  readonly draft: Draft;
  readonly problems: readonly CellProblem[];
  readonly holds: boolean;
  /** The time of day that its time column says, as a part of a day. */
  readonly clock: number | undefined;
  /** From 0 for the morning to 4 for the night, where a cell says so. */
  readonly partOfDay: number | undefined;
}
