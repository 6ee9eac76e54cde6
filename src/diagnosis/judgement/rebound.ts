import { type Medium } from "../../bands/media-table";
import { containerCapacity } from "../../flush/container-capacity";
import { isAbove } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Facts } from "./facts";
import { type Entry, isRead, shareDrained } from "./entry";

/** The lowest third of a pot, which the drain last met, is up to 48 % saltier than its middle [ku-hershey-1991]. */
const drainPerMean = 1.48;
/** A balance of logged litres and two meters is off by so much. Common practice. */
const balanceOff = 1.25;
/** A pot of unknown size holds about so many of its usual waterings. Common practice. */
const wateringsHeld = 4;

/**
 * How salt came back after a flush: by what was fed since and did not drain, or from within; `undefined` where it is
 * not back.
 *
 * Errs to the feed: days without a row count as watered like the rest, for a pot drinks on them too.
 *
 * Formula:  fed when EC now - EC at the flush's end <= 1.25 x 1.48 x sum(ECin Vin - ECout Vout) / litres held
 * Source:   mass balance; 1.48 [ku-hershey-1991]; the rest common practice
 */
export function reboundOf(facts: Facts): "fed" | "from within" | undefined {
  const { phase, ec } = facts;
  if (phase.phase !== "after a flush" || ec?.side !== "high") return undefined;
  const washedTo = phase.flush.flatMap(({ runoffEc }) => runoffEc ?? []).at(-1);
  if (washedTo !== undefined && !isAbove(ec.latest, washedTo, quantities.ec.resolution)) return undefined;
  const rows = phase.evidence.filter(isRead);
  const kept = rows.flatMap((entry) => saltStayed(entry) ?? []);
  const held = litresHeld(facts);
  if (washedTo === undefined || held === undefined || kept.length === 0) return "from within";
  const waterings = Math.max(1, (phase.daysSince ?? 0) / rows.length);
  const explained = (drainPerMean * waterings * kept.reduce((sum, each) => sum + each, 0)) / held;
  return isAbove(ec.latest - washedTo, explained * balanceOff, quantities.ec.resolution) ? "from within" : "fed";
}

/** mS/cm times litres of one watering that did not drain again. */
function saltStayed(entry: Entry): number | undefined {
  const { inputEc, inputLitres, runoffEc, runoffLitres } = entry;
  if (inputEc === undefined || inputLitres === undefined || runoffEc === undefined || runoffLitres === undefined)
    return undefined;
  return shareDrained(entry) === undefined ? undefined : inputEc * inputLitres - runoffEc * runoffLitres;
}

function litresHeld({ options, water, band }: Facts): number | undefined {
  const { containerLitres } = options;
  const medium: Medium | undefined = band.medium;
  if (containerLitres !== undefined && medium !== undefined && medium !== "water culture")
    return containerCapacity(containerLitres, medium);
  return water.litres === undefined ? undefined : wateringsHeld * water.litres;
}
