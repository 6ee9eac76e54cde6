import { type CourseStep, type LimitsThatFit } from "./pot-judgement";
import { type Cause, type Urgency, type VerdictWord } from "./words";

/** What one part of the judgement comes to, before dates are put to its steps. */
export interface Conclusion {
  readonly verdict: VerdictWord;
  readonly urgency: Urgency;
  readonly causes: readonly Cause[];
  readonly steps: readonly CourseStep[];
  /** Strongest first. */
  readonly reasons: readonly string[];
  readonly limitsThatFit?: LimitsThatFit;
}
