import { type LogEventKind } from "../../../log/log";
import { type CourseStep } from "../pot-judgement";
import { type Facts } from "../facts";
import { dryAir, hotAir } from "../limits";
import { showsOnly } from "../plant";
import { plantSays } from "../says/plant-says";
import { airOf, isHurtRoot, lookAtPlant, rootTemperature, wordsOn } from "./common-steps";
import { step } from "./step";

/** What heat of the air does. */
const heatSigns: ReadonlySet<LogEventKind> = new Set(["wilting", "drooping", "tip burn"]);
/** What mites and their like do. */
const pestSigns: ReadonlySet<LogEventKind> = new Set(["pests", "leaf spots", "pale leaves", "tip burn", "twisted growth"]);
/** What mites too small to be seen do. */
const twistSigns: ReadonlySet<LogEventKind> = new Set(["twisted growth", "tip burn", "stunted"]);
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
  const { phase, daysSince } = facts.phase;
  if (phase === "after a flush" && (daysSince ?? 0) < soakedDays && plant.signs.has("heavy pot"))
    return step("water less", "now", plantSays.heavyAfterFlush);
  const roots = rootTemperature(facts, "now");
  if (roots !== undefined) return roots;
  if (isHurtRoot(facts) || plant.signs.has("blossom end rot")) return lookAtPlant(facts);
  const { celsius, vpd } = airOf(facts);
  const isHot = celsius !== undefined && (celsius >= hotAir || (vpd ?? 0) >= dryAir);
  if (isHot && showsOnly(plant, heatSigns)) return step("ease the load", "now", plantSays.airHot(celsius, vpd));
  if (wasSprayed(facts) && showsOnly(plant, spraySigns))
    return step("look at the plant", "now", plantSays.sprayed(wordsOn(facts)));
  if (plant.signs.has("pests") && showsOnly(plant, pestSigns))
    return step("look at the plant", "now", plantSays.pests(wordsOn(facts)));
  if (plant.signs.has("twisted growth") && showsOnly(plant, twistSigns))
    return step("look at the plant", "now", plantSays.twisted(wordsOn(facts)));
  return undefined;
}

/** So many days after a flush a heavy pot is what it left behind. Common practice. */
const soakedDays = 3;

/** A spray within so many rows may still show. Common practice. */
const latelyRows = 4;

const wasSprayed = ({ entries }: Facts): boolean =>
  entries.slice(-latelyRows).some(({ events }) => events.some(({ kind }) => kind === "foliar spray"));
