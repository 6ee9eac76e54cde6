import { plain } from "../../cells/text";
import { washoutRate } from "../../flush/container-capacity";
import { type DrainedMedium, drainedMedia } from "../../flush/container-table";
import { type Facts } from "./facts";

/** What a grower writes of water that finds a way round. Common practice, no source. */
const says =
  /\bruns? (?:straight )?(?:down|past|through)\b|\bone side\b|\bdown the (?:side|wall)\b|\bchannel\w*|\b(?:core|middle|root ?ball|centre|center)\b.*\bdry\b|\b(?:still|stays) (?:bone )?(?:dry|light)\b/;

/** Water that comes out so many times as strong as it goes in, and hardly weaker than at first, washed nothing. */
const pastRatio = 2;
const hardlyWeaker = 0.85;
/** Salt goes with the water that it meets, at most so many times as fast as the table says. Common practice. */
const fastest = 2.5;
/** A fall is asked about only in so much of the pot's volume. */
const early = 0.7;

/**
 * Whether the water of a flush runs past the roots: by the notes, by a drain that stays as strong as it was, or by one
 * that falls faster than so little water can wash.
 *
 * Errs to pausing: an hour of rest and a slow soak harm nothing.
 *
 * Source:   common practice; the washing of a pot as src/flush/washout.ts
 */
export function runsPast({ phase: { flush, evidence, before }, options: { containerLitres }, band }: Facts): boolean {
  if (flush.some(({ notes }) => notes !== undefined && says.test(plain(notes)))) return true;
  const read = flush.flatMap(({ runoffEc }) => runoffEc ?? []);
  const [first, last] = [read[0], read.at(-1)];
  const poured = flush.reduce((sum, { inputLitres }) => sum + (inputLitres ?? 0), 0);
  const inputEc = flush.at(-1)?.inputEc;
  if (first === undefined || last === undefined || inputEc === undefined || read.length < 3) return false;
  const isEarly = containerLitres === undefined || poured < containerLitres;
  if (isEarly && last > pastRatio * inputEc && last > hardlyWeaker * first) return true;
  const medium = drainedMedia.find((each): each is DrainedMedium => each === band.medium);
  const started = [...before, ...evidence].flatMap(({ runoffEc }) => runoffEc ?? []).at(-1);
  if (containerLitres === undefined || medium === undefined || started === undefined) return false;
  const left = Math.max(0, last - inputEc) / Math.max(started - inputEc, Number.EPSILON);
  const leastLeft = Math.exp(-fastest * washoutRate(containerLitres, medium) * poured);
  return poured > 0 && poured < early * containerLitres && started > pastRatio * inputEc && left < leastLeft;
}
