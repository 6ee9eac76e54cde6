import { type Band } from "../bands/band";
import { type Judgement } from "../judgement";
import { type Share } from "../quantities";
import { Refusal } from "../refusal";
import { doubts } from "./doubts";
import { evidence } from "./evidence";
import { type RootZoneReading } from "./row-flags";
import { runoffReadings } from "./runoff-readings";
import { saltOrigin } from "./salt-origin";
import { advice, type AdviceName } from "./verdict-advice";
import { adviceFor } from "./verdict-advice-for";
import { type VerdictAnswer, weighed } from "./verdict-table";

export interface Verdict extends Judgement<VerdictAnswer> {
  /** What to do next. */
  readonly next: string;
  /** When, and what, to measure again. */
  readonly measureAgain: string;
  /** The places, counted from 0, of the readings it rests on, in their order. */
  readonly restsOn: readonly number[];
}

export interface VerdictOptions {
  /** What part of the water drains, 0 to 1: a high salt ratio is judged beside it. */
  readonly leachingFraction?: Share | undefined;
  /** Days since the meter's calibration fell due; 0 or less when it is not. */
  readonly calibrationOverdueDays?: number | undefined;
}

/**
 * The verdict on a root zone: salt, pH, both, neither, or not to be said yet; with what to do next.
 *
 * The first question of an emergency. It errs to doing less: trust in the readings comes before what they say, a trouble needs
 * two readings in a row that stand outside by more than the meters can be off, and a high salt ratio by itself is none.
 *
 * Formula:  in this order: doubts about the readings it would rest on; runoff EC and runoff pH each against the band over
 *           their two latest readings (`evidence`); src/diagnosis/verdict-table.ts; the salt's origin (`saltOrigin`) chooses
 *           what to do about it
 * Valid:    readings in the order they were taken, runoff collected one way; soil: by trend, and with wider doubt
 * Source:   bands: src/bands/band-table.ts; [ku-hershey-1991] for the ratio; two readings: common practice
 *
 * @param readings oldest first; rows without runoff readings are passed over and change nothing
 * @throws {Refusal} `not-a-number` when the days overdue are no number
 * @example verdict([{ runoffPh: 6, runoffEc: 4.6 }, { runoffPh: 6.1, runoffEc: 4.9 }], bandFor("coir")).answer // "salt buildup"
 */
export function verdict(readings: readonly RootZoneReading[], band: Band, options: VerdictOptions = {}): Verdict {
  const taken = runoffReadings(readings);
  if (taken.length === 0) return answered("cannot say", "measure", ["no runoff reading yet"], []);
  const [ec, ph] = [evidence(taken, "ec", band), evidence(taken, "ph", band)];
  const weighedPlaces = new Set([...taken.slice(-2).map(({ place }) => place), ...ec.places, ...ph.places]);
  const restsOn = taken.filter(({ place }) => weighedPlaces.has(place));
  const places = restsOn.map(({ place }) => place);
  const [doubt, ...otherDoubts] = new Set([...overdue(options.calibrationOverdueDays ?? 0), ...restsOn.flatMap(doubts)]);
  if (doubt !== undefined) return answered("check the meter", "check the meter", [doubt, ...otherDoubts], places);
  const origin = saltOrigin(restsOn.at(-1) ?? {}, band, options.leachingFraction);
  const answer = weighed[ec.standing][ph.standing];
  const [stronger, weaker] = answer === "pH out of range" ? [ph, ec] : [ec, ph];
  const reasons = [stronger.reason, weaker.reason, ...(origin.reason === undefined ? [] : [origin.reason])] as const;
  const name = adviceFor(answer, { ec: ec.standing, ph: ph.standing, origin: origin.origin, soil: band.medium === "soil" });
  return answered(answer, name, reasons, places);
}

function answered(answer: Verdict["answer"], name: AdviceName, reasons: Verdict["reasons"], restsOn: readonly number[]): Verdict {
  return { answer, reasons, ...advice[name], restsOn };
}

function overdue(days: number): string[] {
  if (Number.isNaN(days)) throw new Refusal("not-a-number", { quantity: "days since calibration was due", given: days });
  return days > 0 ? [`the meter's calibration is ${days} days overdue`] : [];
}
