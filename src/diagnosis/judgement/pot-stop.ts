import { type Band } from "../../bands/band";
import { type FlushReading } from "../../flush/flush-reading";
import { flushStop } from "../../flush/flush-stop";
import { type FlushStop } from "../../flush/flush-verdict";
import { overFlushLimit } from "../../flush/over-flush-limit";
import { untilTarget } from "../../flush/until-target";
import { isBelow } from "../../maths/compare";
import { type Ec25, type Litres, quantities } from "../../quantities";
import { flushFigures } from "./course/flush-figures";
import { type Entry, tells } from "./entry";
import { type Facts } from "./facts";
import { sideOf } from "./level";
import { runsPast } from "./runs-past";

/** Go on, pause or stop, and why. */
export interface PotStop {
  readonly answer: FlushStop | "cannot say";
  readonly reasons: readonly [string, ...string[]];
  /** The water found a way round: what drains says nothing of the roots. */
  readonly ranPast?: boolean;
}

/** The stop check of a flush under way: by what is seen at the pot first, then by its readings. */
export function stopOf(facts: Facts, limits: Band, isReset: boolean): PotStop {
  const last = facts.phase.flush.at(-1);
  if (!isReset && runsPast(facts)) return past(last);
  if (last !== undefined && tells(last, "heavy pot")) return flooded;
  return isReset ? resetStop(facts) : stopCheck(facts, limits);
}

/** A pot that takes no more water gets none, whatever it reads. */
const flooded: PotStop = {
  answer: "stop: enough water",
  reasons: ["water stands on the pot: it takes no more, and the roots need air"],
};

/** What runs past the roots says nothing of them: what it did not reach is as salty as before. */
const past = (last: Entry | undefined): PotStop => ({
  answer: "stop: no longer falling",
  reasons: [`the water runs past the roots: what it did not reach is as salty as before${noteOf(last)}`],
  ranPast: true,
});
const noteOf = (last: Entry | undefined): string => (last?.notes === undefined ? "" : ` (noted: ${last.notes})`);

/** To a little inside the band, as the course that began the flush said; never past the over-flush limit. */
function stopCheck(facts: Facts, limits: Band): PotStop {
  const readings = flushReadings(facts);
  const { medium } = facts.band;
  const verdict = flushStop(readings, limits, medium === "water culture" ? undefined : facts.options.containerLitres);
  return untilTarget(verdict, readings, flushFigures(facts).target as Ec25);
}

function flushReadings({ evidence, phase, band }: Facts): FlushReading[] {
  const tellsPh = phase.flush.some(({ runoffPh }) => runoffPh !== undefined);
  const asReading = ({ runoffPh, runoffEc, inputLitres }: Entry, litres = inputLitres): FlushReading => ({
    ph: tellsPh ? runoffPh : band.phAim,
    ec: runoffEc,
    litres: litres as Litres | undefined,
  });
  return [
    ...evidence.slice(-1).map((entry) => ({ ...asReading(entry), litres: undefined })),
    ...phase.flush.map((entry) => asReading(entry)),
  ];
}

/** pH that moves by less than this from portion to portion no longer moves. Common practice. */
const stillMoving = 0.1;

/** The stop check of a pH reset: back inside, no longer moving, or enough water. */
function resetStop({ band, phase, options }: Facts): PotStop {
  const values = phase.flush.flatMap(({ runoffPh }) => runoffPh ?? []);
  const [last, before] = [values.at(-1), values.at(-2)];
  if (last === undefined || phase.flush.at(-1)?.runoffPh === undefined)
    return { answer: "cannot say", reasons: ["the last runoff pH was not measured: measure it before pouring more"] };
  const poured = phase.flush.reduce((sum, { inputLitres }) => sum + (inputLitres ?? 0), 0);
  const limit =
    options.containerLitres === undefined || band.medium === "water culture"
      ? Infinity
      : overFlushLimit(options.containerLitres, band.medium);
  const side = sideOf(last, "ph", band);
  if (side === "inside" || side.startsWith("barely"))
    return { answer: "stop: in band", reasons: [`runoff pH ${last} is back in ${band.ph[0]} to ${band.ph[1]}`] };
  if (!isBelow(poured, limit, quantities.litres.resolution))
    return { answer: "stop: enough water", reasons: ["the water limit is reached: more only keeps the roots wet"] };
  if (before !== undefined && Math.abs(last - before) < stillMoving)
    return { answer: "stop: no longer falling", reasons: [`runoff pH ${before}, then ${last}: it no longer moves`] };
  return { answer: "keep going", reasons: [`runoff pH ${last} is still outside ${band.ph[0]} to ${band.ph[1]}`] };
}
