import {
  type Band, type LogAnswers, type LogReading, logVerdict, type LogVerdict, readLog, Refusal, type Timeline, timeline,
} from "../src/index";
import { answersFor, bandOf, type Choices } from "./choices";
import { type SheetSelection } from "./sheet/read-selection";

/** All that the pane shows of one selection: derived from what was read and what was chosen, and from nothing else. */
export interface RootZone {
  readonly selection: SheetSelection;
  /** What the log was read with. */
  readonly answers: LogAnswers;
  readonly reading: LogReading;
  /** The vessel shown; `undefined` where the log names none. */
  readonly vessel: string | undefined;
  readonly band: Band | undefined;
  /** What is wrong with the grower's own limits. */
  readonly bandProblem: string | undefined;
  /** Waits for a band. */
  readonly verdict: LogVerdict | undefined;
  readonly timeline: Timeline;
}

/** Reads the selection with the answers given so far and weighs what it says; what an earlier reading tells is not read again. */
export function rootZoneOf(selection: SheetSelection, choices: Choices, earlier?: RootZone): RootZone {
  const answers = answersFor(choices, headersOf(selection, choices.headerRow));
  const isRead = earlier?.selection === selection && JSON.stringify(earlier.answers) === JSON.stringify(answers);
  const reading = isRead ? earlier.reading : readLog(selection.grid, answers);
  const vessel = vesselOf(reading, choices.vessel);
  const found = bandOf(choices);
  const band = found instanceof Refusal ? undefined : found;
  return {
    selection,
    answers,
    reading,
    vessel,
    band,
    bandProblem: found instanceof Refusal ? found.message : undefined,
    verdict: band === undefined ? undefined : logVerdict(reading.rows, band, vessel),
    timeline: timeline(reading.rows, { band, vessel }),
  };
}

/** Headers stand within so many rows from the top, and what they say does not change with the rows below. */
const headerReach = 60;

/** The headers as the reader finds them without further answers: the names under which answers are kept. */
export function headersOf({ grid }: SheetSelection, headerRow?: number): string[] {
  const top = { ...grid, cells: grid.cells.slice(0, headerReach) };
  return readLog(top, headerRow === undefined ? {} : { headerRow }).columns.map(({ header }) => header);
}

/** Several pots are never weighed together: the one chosen, or else the one read last. */
function vesselOf({ vessels, rows }: LogReading, chosen: string | undefined): string | undefined {
  if (chosen !== undefined && vessels.includes(chosen)) return chosen;
  return vessels.length === 0 ? undefined : (rows.at(-1)?.vessel ?? vessels[0]);
}
