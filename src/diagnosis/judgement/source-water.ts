import { latest } from "../../maths/latest";
import { median } from "../../maths/median";
import { type Entry, isFeed, isWater } from "./entry";
import { figureIn } from "./note-figures";

/**
 * A row whose note speaks of water ("rain water; 20-10-20") and that reads like the feeds of the log is a feed mixed in
 * it. Common practice.
 */
const wateryShare = 0.8;

/** The EC of the latest water poured by itself, or what a note says of it. */
export function waterEcOf(all: readonly Entry[]): number | undefined {
  const water = all.filter(isWater);
  if (water.length === 0) return figureIn(all, "water EC");
  const fed = all.filter(isFeed).flatMap(({ inputEc }) => inputEc ?? []);
  const most = fed.length === 0 ? Infinity : wateryShare * median(fed);
  const [poured] = latest(water, 1, ({ inputEc }) => (inputEc !== undefined && inputEc <= most ? inputEc : undefined));
  return poured ?? figureIn(all, "water EC");
}
