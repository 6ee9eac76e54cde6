import {
  type Band, judge, type LogAnswers, logInTime, type LogReading, type PotJudgement, type PotStanding, readLog, Refusal, type Timeline,
  timeline, urgencies,
} from "../src/index";
import { answersFor, bandOf, type Choices, potChoices } from "./choices";
import { headersOf } from "./headers";
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
  /** What is wrong with the grower's own limits. */
  readonly bandProblem: string | undefined;
  /** Waits for a band. */
  readonly judgement: PotJudgement | undefined;
  /** The rows of the grid that the judgement rests on. */
  readonly restsOn: readonly number[];
  /** The pots that have limits, worst first. */
  readonly pots: readonly PotStanding[];
  readonly timeline: Timeline;
}

/** Reads the selection with the answers given so far and weighs what it says; what an earlier reading tells is not read again. */
export function rootZoneOf(selection: SheetSelection, choices: Choices, earlier?: RootZone): RootZone {
  const answers = answersFor(choices, headersOf(selection, choices.headerRow));
  const isRead = earlier?.selection === selection && JSON.stringify(earlier.answers) === JSON.stringify(answers);
  const reading = isRead ? earlier.reading : readLog(selection.grid, answers);
  const pots = potsOf(reading, choices);
  const vessel = vesselOf(reading, choices.vessel, pots);
  const found = bandOf(potChoices(choices, vessel));
  const band = found instanceof Refusal ? undefined : found;
  const judgement = pots.find((pot) => pot.vessel === vessel)?.judgement;
  const placed = logInTime(reading.rows, vessel).rows;
  return {
    selection,
    answers,
    reading,
    vessel,
    band,
    bandProblem: found instanceof Refusal ? found.message : undefined,
    judgement,
    restsOn: judgement?.restsOn.flatMap((place) => placed[place]?.row ?? []) ?? [],
    pots,
    timeline: timeline(reading.rows, { band, vessel }),
  };
}

/** Every pot for itself, never weighed together; the most urgent first, in the sheet's order where they are alike. */
function potsOf({ vessels, rows }: LogReading, choices: Choices): PotStanding[] {
  const named: readonly (string | undefined)[] = vessels.length === 0 ? [undefined] : vessels;
  const standings = named.flatMap((vessel): PotStanding[] => {
    const band = bandOf(potChoices(choices, vessel));
    if (band === undefined || band instanceof Refusal) return [];
    const { rows: readings, axis } = logInTime(rows, vessel);
    return [{ vessel, judgement: judge(readings, band), lastDay: axis === "dates" ? readings.at(-1)?.day : undefined }];
  });
  const rank = ({ judgement }: PotStanding): number => urgencies.indexOf(judgement.urgency);
  return standings.sort((a, b) => rank(b) - rank(a));
}

/** The pot chosen, or else the worst one; before any has limits, the one read last. */
function vesselOf({ vessels, rows }: LogReading, chosen: string | undefined, pots: readonly PotStanding[]): string | undefined {
  if (chosen !== undefined && vessels.includes(chosen)) return chosen;
  return pots[0]?.vessel ?? (vessels.length === 0 ? undefined : (rows.at(-1)?.vessel ?? vessels[0]));
}
