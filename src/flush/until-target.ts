import { isAbove } from "../maths/compare";
import { type Ec25, quantities } from "../quantities";
import { believableEcs, type FlushReading } from "./flush-reading";
import { type FlushVerdict } from "./flush-verdict";

/**
 * The stop check held to the target of a flush: in the band, but not yet so far inside it that it stays there, goes on.
 *
 * Errs to one portion more now rather than to a second flush; the water limit, a pause and a level reading rule as
 * before.
 *
 * Source:   common practice
 *
 * @param targetEc mS/cm at 25 C to flush to, by `flushTarget`
 */
export function untilTarget(verdict: FlushVerdict, readings: readonly FlushReading[], targetEc: Ec25): FlushVerdict {
  const last = believableEcs(readings).at(-1)?.ec;
  if (verdict.answer !== "stop: in band" || last === undefined || !isAbove(last, targetEc, quantities.ec.resolution))
    return verdict;
  const why = `inside the band, not yet at ${targetEc.toFixed(2)} mS/cm: stopped here it rises above the band again`;
  return { answer: "keep going", reasons: [why, ...verdict.reasons] };
}
