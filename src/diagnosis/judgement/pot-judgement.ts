import { type Act, type Cause, type Phase, type Urgency, type VerdictWord, type When } from "./words";

/** One thing to do, with this pot's own figures. */
export interface CourseStep {
  readonly act: Act;
  readonly when: When;
  /** The moment it falls due, as a sheet date, where the log has dates. */
  readonly at?: number;
  /** What to do, in words, figures included. */
  readonly says: string;
  readonly litres?: number;
  /** mS/cm at 25 C. */
  readonly ec?: number;
  readonly ph?: number;
  /** 0 to 1: of the full feed, of the water poured, of the light; `says` tells which. */
  readonly share?: number;
}

/** Limits of the runoff for a feed that is strong on purpose, to be offered to the grower and never taken unasked. */
export interface LimitsThatFit {
  readonly ph: readonly [low: number, high: number];
  /** mS/cm at 25 C. */
  readonly ec: readonly [low: number, high: number];
}

/**
 * What an expert would say at this pot. The one value behind verdict, course, flush sheet, DIAGNOSE, pane and command
 * line: no sentence of advice is written anywhere else.
 */
export interface PotJudgement {
  readonly verdict: VerdictWord;
  readonly urgency: Urgency;
  readonly phase: Phase;
  readonly causes: readonly Cause[];
  /** In the order to do it; no two steps exclude each other. Never empty. */
  readonly course: readonly [CourseStep, ...CourseStep[]];
  /** One fact a line with the readings it rests on, strongest first. Never empty. */
  readonly reasons: readonly [string, ...string[]];
  /** The places, counted from 0 among the readings given, that it rests on. */
  readonly restsOn: readonly number[];
  /** Only where a strong feed by choice makes the band's own limits the wrong ones. */
  readonly limitsThatFit?: LimitsThatFit;
}

/** A pot of a bench, worst first. */
export interface PotStanding {
  readonly vessel: string | undefined;
  readonly judgement: PotJudgement;
  /** The day of its last reading. */
  readonly lastDay: number | undefined;
}
