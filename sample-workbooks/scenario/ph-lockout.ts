import { newPot } from "./pot";
import { ramp, type Story } from "./story";

/** Hard water from the tap. */
export const water = { ec: 0.55, ph: 7.8 };

/** The day of the new barrel. */
export const barrelDay = 14;

/** The day the grower sees that the feed's pH was never brought down since the new barrel. */
export const foundDay = 33;

/** From the new barrel to the discovery no one measured the feed: it was "the same as always". */
const feedPhNotMeasured = Object.fromEntries(Array.from({ length: foundDay - barrelDay }, (_, i) => [barrelDay + i, ["feedPh"] as const]));

/**
 * A tomato in clay pebbles. From day 14 the feed goes on as hard water leaves it, its pH above 7, and the runoff follows:
 * the EC stays in band while the newest leaves turn yellow. From day 33 the feed is brought to 5.6 again.
 */
export const phLockout: Story = {
  seed: 20260503,
  vessel: "Tomato 1",
  days: 56,
  pot: newPot(3.2, { ec: 2.3, ph: 5.8 }, { channelling: 0.2, phExchange: 0.16 }),
  feed: (day) => [{ litres: ramp(day, [0, 2.2], [30, 3.2]), ec: 2.2, ph: feedPh(day) }],
  thirst: (day) => ({ litres: ramp(day, [0, 1.4], [30, 2.1]), ecTaken: 1.95, phPerLitre: 0.01 }),
  celsius: (day) => ramp(day, [0, 20], [55, 23]),
  notes: {
    0: "tomato, 12 L clay pebbles",
    7: "calibrated both pens",
    14: "new barrel of feed mixed, same as always",
    20: "top leaves a bit pale?",
    24: "yellow between the veins, new leaves only. more feed?",
    27: "EC is fine. not hungry",
    29: "pens checked in buffers, both ok",
    33: "feed pH 7.3!! forgot the acid since the new barrel",
    34: "down in steps, 0.3 to 0.4 a day, not all at once",
    38: "feed at 5.6 now",
    46: "new leaves green again, old ones stay yellow",
    55: "runoff where it was",
  },
  unwritten: [10, 17, 18, 43],
  notMeasured: { 5: ["runoffLitres"], ...feedPhNotMeasured, 25: ["feedPh", "celsius"], 49: ["runoffPh"] },
};

function feedPh(day: number): number {
  if (day < barrelDay) return 5.7;
  return day < foundDay ? 7.3 : ramp(day, [foundDay, 7.3], [foundDay + 5, 5.6]);
}
