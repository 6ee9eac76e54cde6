import { newPot, type Solution } from "./pot";
import { ramp, type Story } from "./story";

/** The day of the flush, counted from 0. */
export const flushDay = 48;

/** Water from the tap, as used for the flush. */
export const water = { ec: 0.35, ph: 6.0 };

const full: Solution = { litres: 2, ec: 1.95, ph: 5.8 };

/**
 * A pepper in coir. The same two litres go on every day while the plant drinks more and more, so that less and less drains
 * and the salt stays; a feed with more ammonium from day 12 slides the pH. Then a flush, a gentle feed and more drain.
 */
export const saltBuildup: Story = {
  seed: 20260105,
  vessel: "Pepper 2",
  days: 75,
  pot: newPot(5.5, { ec: 1.7, ph: 6.1 }, { channelling: 0.15, phExchange: 0.32 }),
  feed: (day) => {
    if (day < flushDay) return [full];
    if (day === flushDay) return [2, 1.5, 1.5, 1.5].map((litres) => ({ litres, ...water }));
    return [{ litres: 3, ec: ramp(day, [flushDay + 1, 1.1], [flushDay + 8, 1.75]), ph: 6 }];
  },
  thirst: (day) => ({
    litres: day > flushDay ? ramp(day, [flushDay + 1, 1.4], [flushDay + 10, 1.65]) : ramp(day, [0, 1.05], [45, 1.83]),
    ecTaken: day > flushDay ? 1.25 : 1.05,
    phPerLitre: day < 12 ? -0.005 : day > flushDay ? -0.012 : -0.053,
  }),
  celsius: (day) => ramp(day, [0, 20.5], [74, 23]),
  notes: {
    0: "new log, peppers potted up 10 L coir",
    5: "calibrated both pens",
    12: "new bag of feed, same strength",
    19: "looking great, lots of flowers",
    27: "calibrated pH 7 + 4",
    31: "hardly any drain today?",
    37: "tips of the older leaves brown",
    41: "white crust on top of the coir",
    44: "runoff EC again, measured twice",
    46: "leaf edges curling, stop & think",
    48: "FLUSH 6.5 L tap water pH 6 in 4 portions, last one noted",
    49: "half strength, 3 L so that some drains",
    52: "a bit stronger each day",
    56: "back to full feed, with drain",
    58: "new growth clean",
    66: "calibrated both pens",
    74: "all good",
  },
  unwritten: [20, 21, 34],
  notMeasured: { 9: ["runoffLitres"], 16: ["celsius"], 24: ["feedPh"], 31: ["runoffLitres"], 39: ["feedPh", "celsius"], 61: ["runoffEc", "runoffPh"] },
};
