import { type Entry } from "./diary";
import { measured } from "./meter";
import { newPot, pour } from "./pot";
import { noise } from "./random";

/** Water from the tap, as used for the flush. */
export const water = { ec: 0.4, ph: 6.2 };

/** The runoff of a salty pepper in 12 L of peat before any water, as the pens showed it. */
export const before = { ec: 7, ph: 5.1 };

/** What the grower wrote after each of the first three portions of 1.7 L. */
export const portions: readonly Entry[] = (() => {
  const scatter = noise(20260309);
  let pot = newPot(7.8, before, { channelling: 0.05, phExchange: 0.5 });
  return [1.7, 1.7, 1.7].map((litres) => {
    const after = pour(pot, { litres, ...water });
    ({ pot } = after);
    return measured({ day: 0, vessel: "Pepper 4", fed: { litres, ...water }, drained: after.drained, celsius: 21 }, scatter);
  });
})();
