import {
  type Band, bandNamed, ec25, judge, logInTime, type LogRow, ownBand, ph, type PotJudgement, urgencies,
} from "../../src/index";
import { type PotCase } from "./case-book";
import { readCase } from "./case-log";

export interface JudgedPot {
  readonly vessel: string | undefined;
  readonly judgement: PotJudgement;
}

/** The band of a case: named as in a cell, or the grower's own limits. */
export function bandOf({ band, limits }: PotCase): Band {
  if (limits === undefined) return bandNamed(band ?? "");
  const [phLow, phHigh, ecLow, ecHigh] = limits;
  return ownBand(ph(phLow), ph(phHigh), ec25(ecLow), ec25(ecHigh));
}

const judged = (rows: readonly LogRow[], band: Band, vessel: string | undefined): JudgedPot =>
  ({ vessel, judgement: judge(logInTime(rows, vessel).rows, band) });

const rank = ({ judgement }: JudgedPot): number => urgencies.indexOf(judgement.urgency);

/** The pots of a case, worst first. */
export function judgedPots(pot: PotCase): readonly JudgedPot[] {
  const { rows, vessels } = readCase(pot);
  const band = bandOf(pot);
  const named = vessels.length === 0 ? [undefined] : vessels;
  const pots = named.map((vessel) => judged(rows, band, vessel));
  return pots.sort((a, b) => rank(b) - rank(a));
}
