import { plain } from "../../cells/text";
import { type Entry } from "./entry";

/** A crop whose needs differ from those of its medium's band. */
export interface CropFound {
  readonly called: string;
  /** Salt-shy: the light feeder's limits are the ones to hold it against. */
  readonly saltShy: boolean;
  readonly ph?: readonly [low: number, high: number];
  readonly phAim?: number;
}

interface CropRow extends CropFound {
  readonly words: RegExp;
}

/**
 * Crops named in notes or names of pots. Strawberry: salt threshold 1.0 dS/m [fao-61]; New Guinea impatiens: 1.0 to
 * 2.6 by pour-through [ncsu-pourthru], toxicity at pH 4.6; iron-efficient crops suffer below pH 6.0 [fisher-low-ph];
 * blueberries want drain at 5.0 to 5.8 [perennia-leachate].
 */
const crops: readonly CropRow[] = [
  {
    called: "strawberry",
    words: /\b(?:strawberr(?:y|ies)|erdbeeren?|fresas?|fraises?|aardbei(?:en)?)\b/,
    saltShy: true,
  },
  { called: "New Guinea impatiens", words: /\bnew guinea impatiens\b/, saltShy: true, ph: [6.0, 6.6], phAim: 6.2 },
  {
    called: "geranium",
    words: /(?<!\bivy )\b(?:geraniums?|pelargoniums?|geranien)\b/,
    saltShy: false,
    ph: [6.0, 6.6],
    phAim: 6.2,
  },
  { called: "marigold", words: /\b(?:marigolds?|tagetes)\b/, saltShy: false, ph: [6.0, 6.6], phAim: 6.2 },
  {
    called: "blueberry",
    words: /\b(?:blueberr(?:y|ies)|heidelbeeren?|arandanos?|myrtilles?)\b/,
    saltShy: true,
    ph: [4.5, 5.8],
    phAim: 5.2,
  },
];

/** The crop that the notes name, by the latest note that names one. */
export function cropIn(entries: readonly Entry[]): CropFound | undefined {
  const seen = new Set<string>();
  for (let at = entries.length - 1; at >= 0; at--) {
    const notes = entries[at]?.notes;
    if (notes === undefined || seen.has(notes)) continue;
    seen.add(notes);
    const text = plain(notes);
    const found = crops.find(({ words }) => words.test(text));
    if (found !== undefined) return found;
  }
  return undefined;
}
