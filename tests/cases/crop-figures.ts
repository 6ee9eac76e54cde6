import { bandNamed, judge, logInTime, type PotJudgement, type VerdictWord, verdictWords } from "../../src/index";
import { readText } from "./case-log";
import { type OpenCrop } from "./open-crops";

/** What is said of a crop day by day, each day knowing only what had been read by then. */
export interface CropFigures {
  readonly name: string;
  readonly days: number;
  /** How often each verdict was said; the words that never were are left out. */
  readonly verdicts: ReadonlyMap<VerdictWord, number>;
  readonly toldToFlush: number;
  /** Days whose EC, or whose pH, is called out of its band, or doubted. */
  readonly flaggedForSalt: number;
  readonly flaggedForPh: number;
  readonly buildupNamed: number;
  readonly buildupDays: number;
}

const dayOne = Date.UTC(1899, 11, 30);
const millisecondsADay = 86_400_000;
const isoDay = (day: number): string => new Date(dayOne + day * millisecondsADay).toISOString().slice(0, 10);

const speaksOfSalt = ({ verdict }: PotJudgement): boolean => verdict.includes("salt buildup");
const speaksOfPh = ({ verdict }: PotJudgement): boolean => verdict.includes("pH out of range");

export function cropFigures(crop: OpenCrop): CropFigures {
  const band = bandNamed(crop.band);
  const { rows } = logInTime(readText(crop.log).rows);
  const said = rows.map((row, place) => ({ date: isoDay(row.day), judgement: judge(rows.slice(0, place + 1), band) }));
  const judgements = said.map(({ judgement }) => judgement);
  const count = (fits: (each: PotJudgement) => boolean): number => judgements.filter(fits).length;
  const buildup = said.filter(({ date }) => crop.buildup?.includes(date));
  const times = verdictWords.map((word) => [word, count(({ verdict }) => verdict === word)] as const);
  return {
    name: crop.name,
    days: rows.length,
    verdicts: new Map(times.filter(([, days]) => days > 0)),
    toldToFlush: count(({ course }) => course.some(({ act }) => act === "flush")),
    flaggedForSalt: count(speaksOfSalt),
    flaggedForPh: count(speaksOfPh),
    buildupNamed: buildup.filter(({ judgement }) => speaksOfSalt(judgement)).length,
    buildupDays: buildup.length,
  };
}
