import { type LogEvent, type PlantLook } from "../../log/log";

/**
 * One row as the judgement takes it: a row of a log, or the cells of one row that DIAGNOSE was given. Plain numbers,
 * because the judgement weighs by itself whether a reading can be believed; what was not measured is `undefined`.
 */
export interface PotReading {
  /** A sheet date, time of day as its fraction; `undefined` throughout a log without dates. */
  readonly day?: number | undefined;
  readonly inputPh?: number | undefined;
  /** mS/cm at 25 C, like every EC here. */
  readonly inputEc?: number | undefined;
  readonly runoffPh?: number | undefined;
  readonly runoffEc?: number | undefined;
  readonly inputLitres?: number | undefined;
  readonly runoffLitres?: number | undefined;
  readonly solutionCelsius?: number | undefined;
  readonly airCelsius?: number | undefined;
  readonly humidityPercent?: number | undefined;
  readonly notes?: string | undefined;
  /** What the notes tell of, where they have been read already; otherwise the judgement reads them. */
  readonly events?: readonly LogEvent[] | undefined;
  readonly plant?: PlantLook | undefined;
  /** Figures of this row that cannot be, in words, where the log reader left them out. */
  readonly unread?: readonly string[] | undefined;
}
