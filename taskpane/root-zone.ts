import {
  type Band,
  type EarlierBand,
  type Litres,
  type LogAnswers,
  type LogReading,
  type PotJudgement,
  type PotReport,
  Refusal,
  reportOf,
  type Timeline,
} from "../src/index";
import { type Choices, potChoices } from "./choices";
import { bandOf, containerOf } from "./chosen-pot";
import { answersFor } from "./column-answers";
import { headersOf } from "./headers";
import { earlierBands } from "./limits-in-time";
import { type SheetSelection } from "./sheet/read-selection";

/** All that the pane shows of one selection: derived from what was read and what was chosen, and from nothing else. */
export interface RootZone {
  readonly selection: SheetSelection;
  /** What the log was read with. */
  readonly answers: LogAnswers;
  readonly reading: LogReading;
  /** The pot shown; `undefined` where the log names none. */
  readonly vessel: string | undefined;
  readonly band: Band | undefined;
  /** What it was before, oldest first. */
  readonly earlier: readonly EarlierBand[];
  /** What is wrong with the grower's own limits. */
  readonly bandProblem: string | undefined;
  readonly containerLitres: Litres | undefined;
  readonly containerProblem: string | undefined;
  /** Waits for a band, and for the answers without which the readings mean nothing. */
  readonly judgement: PotJudgement | undefined;
  /** The rows of the grid that the judgement rests on. */
  readonly restsOn: readonly number[];
  /** The pots that have limits, worst first. */
  readonly pots: readonly PotReport[];
  /** The questions that keep the log from being judged. */
  readonly waitsFor: readonly string[];
  readonly timeline: Timeline;
}

/**
 * Reads the selection with the answers given so far and reports on it; what an earlier reading tells is not read again.
 */
export function rootZoneOf(selection: SheetSelection, choices: Choices, earlier?: RootZone): RootZone {
  const answers = answersFor(choices, headersOf(selection, choices.headerRow));
  const isRead = earlier?.selection === selection && JSON.stringify(earlier.answers) === JSON.stringify(answers);
  const potOf = (pot: string | undefined): Litres | Refusal | undefined => containerOf(potChoices(choices, pot));
  const limitsOf = (pot: string | undefined): Band | Refusal | undefined => bandOf(potChoices(choices, pot));
  const report = reportOf({
    grid: selection.grid,
    answers,
    reading: isRead ? earlier.reading : undefined,
    band: (pot) => known(limitsOf(pot)),
    earlierOf: (pot) => earlierBands(potChoices(choices, pot)),
    containerOf: (pot) => known(potOf(pot)),
    vessel: choices.vessel,
  });
  const { reading, pots, vessel, judgement, rows, waitsFor, timeline } = report;
  const found = limitsOf(vessel);
  return {
    selection,
    answers,
    reading,
    vessel,
    band: known(found),
    earlier: earlierBands(potChoices(choices, vessel)),
    containerLitres: known(potOf(vessel)),
    containerProblem: problemIn(potOf(vessel)),
    bandProblem: problemIn(found),
    judgement,
    restsOn: rows,
    pots,
    waitsFor,
    timeline,
  };
}

const known = <T>(found: T | Refusal): T | undefined => (found instanceof Refusal ? undefined : found);
const problemIn = (found: unknown): string | undefined => (found instanceof Refusal ? found.message : undefined);
