import { type Band } from "../bands/band";
import { type EarlierBand } from "../bands/earlier-band";
import { byVessel, inTime, rankOf } from "../diagnosis/bench";
import { judge } from "../diagnosis/judgement/judge";
import { type PotJudgement, type PotStanding } from "../diagnosis/judgement/pot-judgement";
import { type LogRow } from "../log/log";
import { readLog } from "../log/read-log";
import { type LogAnswers, type LogGrid, type LogQuestionKind, type LogReading } from "../log/reading";
import { type Litres } from "../quantities";
import { inLogUnits } from "./in-log-units";
import { timeline, type Timeline } from "../recovery/timeline/timeline";

/** The band of each pot, where they differ. */
export type BandOfPot = (vessel: string | undefined) => Band | undefined;

/** What a report is made from. */
export interface ReportRequest {
  readonly grid: LogGrid;
  readonly answers?: LogAnswers | undefined;
  /** The log as it was read before, where neither grid nor answers have changed. */
  readonly reading?: LogReading | undefined;
  /** One band for all pots, or each pot's own; a pot without one is not judged. */
  readonly band?: Band | BandOfPot | undefined;
  /** What each pot's band was before, oldest first: past rows are drawn and flagged by it, and none is judged by it. */
  readonly earlierOf?: ((vessel: string | undefined) => readonly EarlierBand[]) | undefined;
  /** The volume of each pot, where it is known. */
  readonly containerOf?: ((vessel: string | undefined) => Litres | undefined) | undefined;
  /** The pot to show; otherwise, or where the log does not name it, the worst one is. */
  readonly vessel?: string | undefined;
  /** Where the log stands, for the title. */
  readonly sheetName?: string | undefined;
}

/** One pot of the log, with the rows of the grid that its judgement rests on. */
export interface PotReport extends PotStanding {
  readonly rows: readonly number[];
}

/** All that pane, command line and flush sheet show of a log. */
export interface Report {
  readonly reading: LogReading;
  /** Worst first; empty without a band. */
  readonly pots: readonly PotReport[];
  /** The pot shown; `undefined` where the log names none. */
  readonly vessel: string | undefined;
  /** Of the pot shown; waits for a band, and for the answers without which the readings mean nothing. */
  readonly judgement: PotJudgement | undefined;
  readonly rows: readonly number[];
  /** The questions that keep the log from being judged; empty where nothing does. */
  readonly waitsFor: readonly string[];
  readonly timeline: Timeline;
  readonly title: string;
}

/**
 * The one path from a grid, the answers and a band to what is shown: the log read, its pots judged, worst first, and
 * the shown one drawn. Several pots are never weighed together.
 *
 * @example reportOf({ grid: { cells: [["Date", "Runoff EC"], [45383, 2.4]] }, band: bandFor("coir") }).judgement.verdict // "in band"
 */
export function reportOf(request: ReportRequest): Report {
  const { grid, answers, vessel: asked, sheetName } = request;
  const bandOf: BandOfPot = typeof request.band === "function" ? request.band : () => request.band as Band | undefined;
  const reading = request.reading ?? readLog(grid, answers);
  const waitsFor = questionsBefore(reading);
  const pots = waitsFor.length > 0 ? [] : potsOf(reading, bandOf, request.containerOf);
  const isThere = asked !== undefined && reading.vessels.includes(asked);
  const shown = isThere ? pots.find(({ vessel }) => vessel === asked) : pots[0];
  const vessel = shown === undefined ? vesselUnjudged(reading, asked) : shown.vessel;
  const place = [sheetName, vessel].filter((each) => each !== undefined && each !== "").join(", ");
  return {
    reading,
    pots,
    vessel,
    judgement: shown?.judgement,
    rows: shown?.rows ?? [],
    waitsFor,
    timeline: timeline(reading.rows, { band: bandOf(vessel), earlier: request.earlierOf?.(vessel), vessel }),
    title: place === "" ? "Recovery timeline" : `Recovery timeline: ${place}`,
  };
}

/** Kinds of questions without whose answer a reading has no value, or no time. */
const decisive: ReadonlySet<LogQuestionKind> = new Set<LogQuestionKind>([
  "ppm scale",
  "EC unit",
  "date order",
  "which row is the header",
  "layout",
]);

/** The measures that a verdict cannot be without. */
const verdictNeeds: ReadonlySet<string> = new Set(["runoff EC", "runoff pH"]);

/** An unknown column keeps the log waiting only where it may be the runoff's EC or pH. */
function questionsBefore({ questions }: LogReading): readonly string[] {
  return questions
    .filter(
      ({ kind, choices }) =>
        decisive.has(kind) || (kind === "what is this column" && choices.some((choice) => verdictNeeds.has(choice))),
    )
    .map(({ text }) => text);
}

function potsOf(
  { rows, vessels, columns }: LogReading,
  bandOf: BandOfPot,
  containerOf: ReportRequest["containerOf"],
): readonly PotReport[] {
  const pots: ReadonlyMap<string | undefined, readonly LogRow[]> =
    vessels.length === 0 ? new Map([[undefined, rows]]) : byVessel(rows);
  const named = [...pots].filter(([vessel]) => vessels.length === 0 || vessel !== undefined);
  const reports = named.flatMap(([vessel, own]): PotReport[] => {
    const band = bandOf(vessel);
    if (band === undefined) return [];
    const ordered = inTime(own);
    const found = judge(ordered, band, { containerLitres: containerOf?.(vessel) });
    const judgement = inLogUnits(found, columns);
    return [
      {
        vessel,
        judgement,
        lastDay: ordered.at(-1)?.day,
        rows: judgement.restsOn.flatMap((at) => ordered[at]?.row ?? []),
      },
    ];
  });
  return reports.sort((a, b) => rankOf(a.judgement) - rankOf(b.judgement));
}

/** It is not judged: the pot asked for, or else the one read last. */
function vesselUnjudged({ vessels, rows }: LogReading, asked: string | undefined): string | undefined {
  if (asked !== undefined && vessels.includes(asked)) return asked;
  return vessels.length === 0 ? undefined : (rows.at(-1)?.vessel ?? vessels[0]);
}
