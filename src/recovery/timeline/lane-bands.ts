import { type Band } from "../../bands/band";
import { type EarlierBand } from "../../bands/earlier-band";

type Limits = readonly [low: number, high: number];

/** The target band of a lane over a stretch of the log. */
export interface LaneBand {
  /** The day on which it begins; `undefined` where it reaches back beyond the first reading. */
  readonly from: number | undefined;
  /** The day on which the next one begins; `undefined` where it reaches beyond the last reading. */
  readonly to: number | undefined;
  readonly limits: Limits;
}

/**
 * The target bands of a lane in order of time: today's last, and it alone where the limits never changed. Stretches
 * that no reading falls into are left out, and neighbours with the same limits are one.
 *
 * @param limitsOf the lane's own pair of a band's limits
 * @param earlier oldest first
 */
export function laneBands(
  limitsOf: (band: Band) => Limits | undefined,
  { today, earlier }: { readonly today: Band; readonly earlier: readonly EarlierBand[] },
  [first, last]: readonly [first: number, last: number],
): readonly LaneBand[] {
  let next = -Infinity;
  const bands: LaneBand[] = [];
  for (const { band, until } of [...earlier, { band: today, until: Infinity }]) {
    const from = next;
    next = Math.max(next, until);
    const limits = limitsOf(band);
    const isSeen = until > Math.max(from, first) && (from <= last || until === Infinity);
    if (limits === undefined || !isSeen) continue;
    const before = bands.at(-1);
    const isSame = before?.limits.every((limit, end) => limit === limits[end]) === true;
    if (isSame) bands.pop();
    const begun = isSame ? before.from : from <= first ? undefined : from;
    bands.push({ from: begun, to: until > last ? undefined : until, limits });
  }
  return bands;
}
