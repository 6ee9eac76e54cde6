import { type LogEventKind } from "../../../log/log";
import { type CourseStep } from "../pot-judgement";
import { type Facts } from "../facts";
import { dryAir, hotAir } from "../limits";
import { plantSays } from "../says/other-says";
import { airOf, isHurtRoot, lookAtPlant, rootTemperature, wordsOn } from "./common-steps";
import { step } from "./step";

/** What heat of the air does. */
const heatSigns: ReadonlySet<LogEventKind> = new Set(["wilting", "drooping"]);
/** What a spray does. */
const spraySigns: ReadonlySet<LogEventKind> = new Set(["leaf spots", "tip burn", "dying leaves"]);

/**
 * What ails a plant at good readings, where the log itself tells it: roots too cold or too warm, rotten roots, hot air,
 * a spray, pests. `undefined` where it does not, or tells only of a part of it.
 *
 * Source:   common practice
 */
export function elsewhere(facts: Facts): CourseStep | undefined {
  const { plant } = facts;
  const roots = rootTemperature(facts, "now");
  if (roots !== undefined) return roots;
  if (isHurtRoot(facts) || plant.signs.has("blossom end rot")) return lookAtPlant(facts);
  const isOnly = (signs: ReadonlySet<LogEventKind>): boolean =>
    plant.kinds.length > 0 && plant.kinds.every((kind) => signs.has(kind));
  const { celsius, vpd } = airOf(facts);
  const isHot = celsius !== undefined && (celsius >= hotAir || (vpd ?? 0) >= dryAir);
  if (isHot && isOnly(heatSigns))
    return step("ease the load", "now", plantSays.airHot(celsius, vpd));
  if (wasSprayed(facts) && isOnly(spraySigns)) return step("look at the plant", "now", plantSays.sprayed(wordsOn(facts)));
  if (isOnly(new Set(["pests"]))) return step("look at the plant", "now", plantSays.pests(wordsOn(facts)));
  return undefined;
}

/** A spray within so many rows may still show. Common practice. */
const latelyRows = 4;

const wasSprayed = ({ entries }: Facts): boolean =>
  entries.slice(-latelyRows).some(({ events }) => events.some(({ kind }) => kind === "foliar spray"));
