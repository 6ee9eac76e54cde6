import { type EarlierBand, Refusal } from "../src/index";
import { type EarlierLimits, isBlankLimits, limitNames, type OwnLimits, type PotChoices } from "./choices";
import { bandOf } from "./chosen-pot";

const isSame = (a: OwnLimits | undefined, b: OwnLimits | undefined): boolean =>
  a === b ||
  (a !== undefined &&
    b !== undefined &&
    limitNames.every((name) => a[name].trim() === b[name].trim()));

/** What still holds on some day: a set that a later one reaches back beyond holds on none. */
const stillSeen = (earlier: readonly EarlierLimits[], since: number | undefined): EarlierLimits[] =>
  since === undefined ? [] : earlier.filter((before) => before.since === undefined || before.since < since);

/**
 * What a change of the own limits makes of a pot's choices. Limits that stood are kept with the day on which others
 * take their place, at first that of the newest reading. Until another reading comes, what is typed is one change; and
 * who types what stood before has changed nothing.
 *
 * @param newest the sheet's day of the newest reading; a log without dates has none, and no earlier limits
 */
export function limitsChanged(pot: PotChoices, typed: OwnLimits, newest: number | undefined): Partial<PotChoices> {
  const own = isBlankLimits(typed) ? undefined : typed;
  const stood = bandOf(pot);
  const hadLimits = stood !== undefined && !(stood instanceof Refusal);
  const { since, earlier } = hadLimits && newest !== undefined && pot.typedAt !== newest
    ? { since: newest, earlier: [...stillSeen(pot.earlier, pot.since), { own: pot.own, since: pot.since }] }
    : pot;
  const last = earlier.at(-1);
  if (last !== undefined && isSame(last.own, own))
    return { own, since: last.since, earlier: earlier.slice(0, -1), typedAt: undefined };
  return { own, since, earlier, typedAt: newest };
}

/** Today's limits hold from that day, `undefined` for all rows. Before the first own ones the medium's stood. */
export const holdingFrom = ({ earlier }: PotChoices, since: number | undefined): Partial<PotChoices> => ({
  since,
  earlier: earlier.length === 0 ? [{ own: undefined, since: undefined }] : earlier,
});

/** Whether other limits stood before, or the medium's could have. */
export const canBeDated = ({ own, medium, earlier }: PotChoices): boolean =>
  earlier.length > 0 || (own !== undefined && medium !== undefined);

/** The bands that stood before today's, oldest first. */
export function earlierBands(pot: PotChoices): readonly EarlierBand[] {
  const bands: EarlierBand[] = [];
  let until = pot.since;
  for (const { own, since } of [...pot.earlier].reverse()) {
    if (until === undefined) break;
    if (since !== undefined && since >= until) continue;
    const band = bandOf({ ...pot, own });
    if (band !== undefined && !(band instanceof Refusal)) bands.unshift({ band, until });
    until = since;
  }
  return bands;
}
