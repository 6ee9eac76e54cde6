import { newPot } from "./pot";
import { ramp, type Story } from "./story";

/** Water from the tap. */
export const water = { ec: 0.4, ph: 7.1 };

/**
 * A pepper in coir in a hot fortnight. The same two litres of a strong feed go on while the plant drinks nearly all of
 * them: next to nothing drains, the salt stays, and the log ends on the day the leaves are burnt. Nothing is done yet.
 */
export const crisis: Story = {
  seed: 20260622,
  vessel: "Pepper 5",
  days: 18,
  pot: newPot(6, { ec: 3, ph: 6.2 }, { channelling: 0.12, phExchange: 0.3 }),
  feed: () => [{ litres: 2, ec: 2.2, ph: 5.9 }],
  thirst: (day) => ({ litres: ramp(day, [0, 1.45], [14, 1.75]), ecTaken: 1.0, phPerLitre: -0.006 }),
  celsius: (day) => ramp(day, [0, 22], [12, 26]),
  notes: {
    0: "pepper, 10 L coir. new log",
    4: "calibrated both pens",
    7: "hot all week, drinks a lot",
    12: "less and less drains",
    13: "tips of the older leaves brown",
    15: "white crust on the coir",
    17: "leaf edges burnt, new leaves too. what now?",
  },
  unwritten: [],
  notMeasured: { 6: ["celsius"] },
};
