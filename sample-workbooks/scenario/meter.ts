import { type Entry, type Reading } from "./diary";
import { type Solution } from "./pot";
import { type Noise } from "./random";

/** The steps in which a grower's pens and jugs show a value. */
const steps = { ec: 0.01, ph: 0.1, poured: 0.1, drained: 0.05, celsius: 0.5 };

const toStep = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(2));

/** What the pens and the jug show: the truth with a pen's scatter, in a pen's steps. */
export function measured(truth: { day: number; vessel: string; fed: Solution; drained: Solution; celsius: number }, { around0 }: Noise): Entry {
  const { day, vessel, fed, drained, celsius } = truth;
  const dry = drained.litres < 0.05;
  return {
    day,
    vessel,
    feedEc: toStep(fed.ec * (1 + around0(0.012)), steps.ec),
    runoffEc: dry ? undefined : toStep(drained.ec * (1 + around0(0.018)), steps.ec),
    feedPh: toStep(fed.ph + around0(0.05), steps.ph),
    runoffPh: dry ? undefined : toStep(drained.ph + around0(0.05), steps.ph),
    feedLitres: toStep(fed.litres, steps.poured),
    runoffLitres: toStep(drained.litres * (1 + around0(0.03)), steps.drained),
    celsius: toStep(celsius + around0(0.3), steps.celsius),
  };
}

/** The entry without the readings that the grower did not take that day. */
export function without(entry: Entry, missing: readonly Reading[]): Entry {
  return { ...entry, ...Object.fromEntries(missing.map((reading) => [reading, undefined])) };
}
