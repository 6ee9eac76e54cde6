import { type Entry } from "./diary";
import { newPot, type Solution } from "./pot";
import { ramp, type Story, tell } from "./story";

const days = 28;
const feed = (litres: number, ec: number): (() => readonly Solution[]) => {
  const portion = [{ litres, ec, ph: 5.9 }];
  return () => portion;
};
const shared = { days, wateredEvery: 2, unwritten: [], notMeasured: {}, celsius: (day: number) => 20 + (day % 3) } as const;

/** Four pots on one bench in four media; only the pepper is in trouble, from too little drain. */
const stories: readonly Story[] = [
  {
    ...shared,
    seed: 11,
    vessel: "Tomato 1",
    pot: newPot(3.5, { ec: 2.4, ph: 5.8 }, { channelling: 0.2, phExchange: 0.2 }),
    feed: feed(3.8, 2.3),
    thirst: () => ({ litres: 2.5, ecTaken: 2, phPerLitre: 0.005 }),
    notes: { 6: "pens calibrated" },
  },
  {
    ...shared,
    seed: 12,
    vessel: "Pepper 3",
    pot: newPot(5, { ec: 2.6, ph: 6 }, { channelling: 0.15, phExchange: 0.3 }),
    feed: feed(3, 2),
    thirst: (day) => ({ litres: ramp(day, [0, 1.9], [26, 2.7]), ecTaken: 0.9, phPerLitre: -0.02 }),
    notes: { 16: "tips burnt", 24: "flush it this weekend" },
  },
  {
    ...shared,
    seed: 13,
    vessel: "Basil",
    pot: newPot(1.8, { ec: 1.3, ph: 5.9 }, { channelling: 0.1, phExchange: 0.3 }),
    feed: feed(0.9, 1.2),
    thirst: () => ({ litres: 0.55, ecTaken: 1, phPerLitre: -0.01 }),
    notes: { 10: "cut back by half" },
  },
  {
    ...shared,
    seed: 14,
    vessel: "Strawberry 2",
    pot: newPot(2.4, { ec: 1.3, ph: 5.8 }, { channelling: 0.1, phExchange: 0.3 }),
    feed: feed(1.2, 1.2),
    thirst: () => ({ litres: 0.75, ecTaken: 1, phPerLitre: -0.01 }),
    notes: { 4: "repotted into fresh peat", 20: "new lamp, 20 cm higher" },
  },
];

/** The readings of all four, day by day, as they would stand in a tidy log. */
export const manyVesselsEntries: readonly Entry[] = stories
  .flatMap((story) => tell(story).map(({ entry }) => entry))
  .sort((a, b) => a.day - b.day);
