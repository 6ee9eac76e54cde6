import { acidCaution, drainCaution } from "./cautions";
import { litresText, percentText, phText } from "./figures";

export const phSays = {
  mendInput: (now: number, aim: number): string =>
    `What is poured stands at ${phText(now)}. Mend it before the next feed: pour at ${phText(aim)}; until then nothing else that is done about pH will hold. ${acidCaution}`,
  penOnFeed: (now: number): string =>
    `What is poured reads ${phText(now)}, far outside: put the pen into a buffer, then into the feed again, before anything is poured.`,
  treatAlkalinity: (alkalinity: number | undefined): string =>
    `${alkalinity === undefined ? "Have the water's alkalinity measured: above 150 mg/L CaCO3 it" : `The water's alkalinity of ${alkalinity} mg/L CaCO3`} ` +
    "pulls the pH up week by week, whatever its own pH. Neutralise about three quarters of it in the raw water, before the feed (ACIDDOSE). " +
    acidCaution,
  steerDown: (to: number): string =>
    `Steer down: pour at ${phText(to)}, with a little ammonium in the feed, for nitrate uptake raises the pH; if the water is hard, its alkalinity is next. ` +
    `Small steps, over a week. ${acidCaution}`,
  steerUp: (to: number): string =>
    `Stop adding acid, less ammonium and more nitrate in the feed, and pour at the upper end, ${phText(to)}. Small steps, over a week. ${acidCaution}`,
  pouredAlready: (up: boolean, now: number): string =>
    `${phText(now)} is poured already and has not brought it ${up ? "up" : "down"}: pour on at it, not further, and change what holds it there. ` +
    (up
      ? `Less ammonium and more nitrate in the feed, no acid; in peat or bark lime on a few test plants first. Small steps, over a week. ${acidCaution}`
      : `A little ammonium in place of nitrate in the feed, for nitrate uptake raises the pH; and the water's alkalinity, if it is above 150 mg/L CaCO3. Small steps, over a week. ${acidCaution}`),
  steerBuffered: (up: boolean, to: number): string =>
    (up
      ? `Stop adding acid, feed nitrate instead of ammonium, pour at ${phText(to)}. `
      : `An acid feed (some ammonium), poured at ${phText(to)}; iron chelate helps the new leaves meanwhile. `) +
    `This medium moves over 1 to 2 weeks: ${up ? "lime or a bicarbonate drench" : "a stronger acid feed"} on a few test plants first. Spoiled leaves do not mend. ${acidCaution}`,
  reset: (aim: number, litres: number | undefined, up: boolean): string =>
    `Reset once: rinse with weak feed at ${phText(aim)}, in portions with pauses${litres === undefined ? "" : `, ${litresText(litres)} at most`}. ` +
    `Stop when the runoff pH is back inside, or no longer moves. Then ${up ? "less ammonium and no more acid" : "a little ammonium"} in the feed. The runoff comes back before the medium does: ` +
    `read again at 24 and 48 h and in 3 to 7 days, steer on, and do not rinse again for pH alone. ${drainCaution} ${acidCaution}`,
  resetTank: (aim: number): string =>
    `Set the tank to ${phText(aim)} in thirds over the same day, stirred and measured after each. ${acidCaution}`,
  steerTank: (aim: number): string =>
    `Set the tank to ${phText(aim)} in small steps, stirred and measured after each. ${acidCaution}`,
  keepSteering: (to: number): string =>
    `Pour on at ${phText(to)} and do not rinse again for pH alone: the medium gives its old pH back for days. ${acidCaution}`,
  bufferFirst:
    "Before anything is done about pH, put the pen into two buffers: no note of the last 30 days says that it was calibrated.",
} as const;

/** "drinks 60 % of before". */
export const drinksText = (share: number): string => `it drinks ${percentText(share)} of before`;
