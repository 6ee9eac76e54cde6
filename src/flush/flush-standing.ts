import { type Band } from "../bands/band";
import { type Ec25, type Litres } from "../quantities";
import { flushLeft, type FlushLeft } from "./flush-left";
import { type FlushPlan } from "./flush-plan";
import { type FlushReading, litresPoured } from "./flush-reading";
import { flushStop } from "./flush-stop";
import { type FlushVerdict } from "./flush-verdict";
import { untilTarget } from "./until-target";

/** Where a flush stands, and what to pour next. */
export interface FlushStanding {
  readonly says: FlushVerdict;
  /** L of the next portion; `undefined` when nothing is to be poured now. */
  readonly nextLitres: Litres | undefined;
  readonly poured: Litres;
  readonly left: FlushLeft;
}

interface FlushAim {
  readonly band: Band;
  readonly containerLitres: Litres;
  readonly waterEc: Ec25;
  /** mS/cm at 25 C to flush to: a little inside the band (`flushTarget`). */
  readonly targetEc: Ec25;
  readonly plan: FlushPlan;
}

/**
 * The next portion of a flush under way, in litres, with what the stop check says.
 *
 * Feeds the top of the flush sheet and of the pane. The stop check rules; where it says "in band" and the last reading
 * is not yet at the target, one portion more is poured. Errs to less: never more than the litres that the pot's own
 * readings ask for.
 *
 * Formula:  next = min(a portion of the plan, litres left by `flushLeft` where it can say)
 * Valid:    as `flushStop`
 * Source:   common practice
 */
export function flushStanding(readings: readonly FlushReading[], aim: FlushAim): FlushStanding {
  const says = untilTarget(flushStop(readings, aim.band, aim.containerLitres), readings, aim.targetEc);
  const left = flushLeft(readings, aim.targetEc, aim.waterEc);
  const portion = aim.plan.portions[0]?.litres;
  const goesOn = says.answer === "keep going" && portion !== undefined;
  const next = goesOn ? Math.min(portion, left.litres === "cannot say" ? portion : left.litres) : undefined;
  return { says, nextLitres: next as Litres | undefined, poured: litresPoured(readings), left };
}
