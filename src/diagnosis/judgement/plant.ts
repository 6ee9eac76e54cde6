import { type LogEvent, type LogEventKind } from "../../log/log";
import { daysBetween, type Entry, isFilled } from "./entry";
import { lowUptake } from "./limits";

/** How the plant stands, by the notes of the last days and the columns kept for it. */
export interface PlantFound {
  /** Wilting, drooping or not drinking: it cannot wait. */
  readonly failing: boolean;
  /** Any sign of trouble. */
  readonly ill: boolean;
  /** Clean new growth was seen, and no sign of trouble. */
  readonly clean: boolean;
  readonly signs: ReadonlySet<LogEventKind>;
  /** Those of the signs that are trouble. */
  readonly kinds: readonly LogEventKind[];
  /** What it drinks now as a share of before, where that is low. */
  readonly drinks: number | undefined;
  /** The grower's words, each once, latest first. */
  readonly words: readonly string[];
}

/** Signs of the last two rows count, and of rows so many days old. Common practice. */
const latestRows = 2;
const latestDays = 3;
/** Clean growth is seen less often than trouble. Common practice. */
const cleanRows = 4;
/** In a column of 0 to 3 this is trouble. Common practice. */
const trouble = 2;

const failures: readonly LogEventKind[] = ["wilting", "drooping", "not drinking"];
const troubles: readonly LogEventKind[] = [
  ...failures,
  "tip burn",
  "leaf spots",
  "interveinal yellowing",
  "pale new growth",
  "pale old leaves",
  "pale leaves",
  "purple leaves",
  "dying leaves",
  "blossom end rot",
  "stunted",
  "twisted growth",
  "brown roots",
  "bad smell",
  "pests",
];

/**
 * The plant's own word. It confirms or contradicts the readings; where it fails, nothing is ever "carry on".
 *
 * Errs to trouble: a bad sign of the last three days stands until a later note takes it back.
 *
 * Source:   common practice
 *
 * @param drinks uptake now as a share of before
 */
export function plantOf(entries: readonly Entry[], drinks: number | undefined): PlantFound {
  const rows = entries.filter(isFilled);
  const last = rows.at(-1);
  const recent = rows.filter(
    (row, at) => at >= rows.length - latestRows || (daysBetween(row, last) ?? Infinity) <= latestDays,
  );
  const since = recent.slice(recent.map((row) => isClean(row)).lastIndexOf(true) + 1);
  const seen = [...(since.length < recent.length ? recent.slice(-since.length - 1) : recent)];
  const signs = new Set(seen.flatMap(signsOf));
  const low = drinks !== undefined && drinks <= lowUptake ? drinks : undefined;
  const bad = troubles.filter((kind) => signs.has(kind));
  const failing = low !== undefined || failures.some((kind) => signs.has(kind));
  const ill = failing || bad.length > 0;
  const clean = !ill && rows.slice(-cleanRows).some(isClean);
  const told = [...seen]
    .reverse()
    .flatMap((row) => row.events.filter(({ kind }) => bad.includes(kind)).map(({ words }: LogEvent) => words));
  return { failing, ill, clean, signs, kinds: bad, drinks: low, words: [...new Set(told)] };
}

/** Whether the trouble that was seen is of these kinds and of no other; where none was seen it is of none. */
export const showsOnly = ({ kinds }: PlantFound, signs: ReadonlySet<LogEventKind>): boolean =>
  kinds.length > 0 && kinds.every((kind) => signs.has(kind));

const isClean = (row: Entry): boolean => signsOf(row).includes("clean new growth");

/** What a row's note and its columns say was seen. */
function signsOf({ events, plant }: Entry): LogEventKind[] {
  const noted = events.map(({ kind }) => kind);
  if (plant === undefined) return noted;
  const { newGrowth, posture, spread, roots } = plant;
  if (newGrowth === 0 && !((posture ?? 0) >= trouble)) noted.push("clean new growth");
  if (newGrowth !== undefined && newGrowth >= trouble) noted.push("pale new growth");
  if (posture !== undefined && posture >= trouble) noted.push(posture > trouble ? "wilting" : "drooping");
  if (spread !== undefined && spread >= trouble) noted.push("leaf spots");
  if (roots !== undefined && roots >= trouble) noted.push("brown roots");
  return noted;
}
