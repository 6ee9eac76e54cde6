import { newPot } from "./pot";
import { ramp, type Story } from "./story";

/** Water from the tap. */
export const water = { ec: 0.35, ph: 7.2 };

/** A strawberry in peat, watered every second day with enough drain, and nothing goes wrong: what a quiet log looks like. */
export const healthyBench: Story = {
  seed: 20260412,
  vessel: "Strawberry 1",
  days: 62,
  wateredEvery: 2,
  pot: newPot(2.6, { ec: 1.35, ph: 5.9 }, { channelling: 0.12, phExchange: 0.3 }),
  feed: (day) => [{ litres: ramp(day, [0, 1.2], [60, 1.6]), ec: 1.25, ph: 5.9 }],
  thirst: (day) => ({ litres: ramp(day, [0, 0.8], [60, 1.1]), ecTaken: 1.0, phPerLitre: -0.004 }),
  celsius: (day) => ramp(day, [0, 19], [61, 21]),
  notes: {
    0: "strawberry in 5 L peat, second season",
    8: "calibrated both pens",
    18: "first flowers",
    26: "took off runners",
    34: "calibrated both pens",
    42: "fruit setting",
    50: "first ripe ones!",
    58: "calibrated both pens",
  },
  unwritten: [30],
  notMeasured: { 14: ["runoffLitres"], 22: ["celsius"], 44: ["feedPh", "runoffPh"] },
};
