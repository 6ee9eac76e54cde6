import { plain } from "../../cells/text";
import { lastPlace } from "../../maths/latest";
import { median } from "../../maths/median";
import { type Entry, isFeed, tells } from "./entry";
import { percentText } from "./says/figures";

/** "same recipe", "recipe as always", "mixed as ever, 10 g per 10 L". Common practice, no source. */
const saysSame =
  /\b(?:same|unchanged|usual|identical|gleiches?|selbes?|misma|meme|zelfde) (?:old )?(?:recipe|mix|feed|dose|nutrients?|grams?|rezept|receta|recette|recept)\b|\b(?:recipe|mix|feed|dose)\b.*\b(?:unchanged|as (?:always|ever|before|usual)|the same|not changed)\b/;

/** So many feeds of one recipe, and how far the latest may read from the first ones. Common practice. */
const fewestFeeds = 4;
const mostApart = 0.15;
/** The runoff of a probe that drifts goes the same way; this much the other way and the pot itself moved. */
const otherWay = 0.1;

/**
 * One recipe, and its EC walks off reading by reading while the runoff goes along: the probe drifts, or what is
 * weighed and dosed does.
 *
 * Errs to doubt: an EC standard costs five minutes, a feed raised by a probe that reads low burns the roots. Only the
 * keeper's own word tells that the recipe stayed.
 *
 * Source:   common practice
 *
 * @param read the readings since the latest calibration, oldest first
 */
export function sameRecipeDrift(read: readonly Entry[]): string[] {
  if (!read.some(isSaidSame)) return [];
  const changed = lastPlace(read, (entry) => tells(entry, "feed change") && !isSaidSame(entry));
  const feeds = read.slice(Math.max(0, changed)).filter(isFeed);
  if (feeds.length < fewestFeeds || !feeds.slice(1).some(isSaidSame)) return [];
  const moved = shareMoved(feeds.flatMap(({ inputEc }) => inputEc ?? []));
  if (!(Math.abs(moved) >= mostApart)) return [];
  const drained = shareMoved(feeds.flatMap(({ runoffEc }) => runoffEc ?? []));
  if (drained * Math.sign(moved) < -otherWay) return [];
  const way = moved < 0 ? "less" : "more";
  return [
    `by the notes the recipe stayed the same, and the feed reads ${percentText(Math.abs(moved))} ${way} than it did: the EC probe drifts, or what is weighed and dosed does`,
  ];
}

const isSaidSame = ({ notes }: Entry): boolean => notes !== undefined && saysSame.test(plain(notes));

/** From the first two readings to the last two, as a share; 0 with fewer than four. */
function shareMoved(values: readonly number[]): number {
  if (values.length < fewestFeeds) return 0;
  return median(values.slice(-2)) / median(values.slice(0, 2)) - 1;
}
