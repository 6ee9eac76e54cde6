/**
 * An answer in words with the reasons it rests on. "cannot say" is always one of the answers: a judgement is never the
 * fall-through of a comparison.
 */
export interface Judgement<Answer extends string> {
  readonly answer: Answer | "cannot say";
  /** One fact a line, with its number, strongest first. Never empty. */
  readonly reasons: readonly [string, ...string[]];
}
