import fc from "fast-check";
import {
  type Band, bandFor, type Feeder, feeders, media, type Medium, type PotReading, Refusal, type Sample, samples,
} from "../../src/index";

/** What growers write beside their readings; most rows have nothing. */
const remarks = [
  "calibrated", "wilting", "wilting though wet", "pot light; wilting", "leaf tips burnt", "new growth clean",
  "leaves pale", "plain water", "flushed", "flushing", "slow-release in the mix", "top-dressed slow-release granules",
  "new tank mixed",
  "pots heavy", "alkalinity 200", "strawberries",
] as const;

const tenths = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(low * 10), max: Math.round(high * 10) }).map((each) => each / 10);
const maybe = <T>(value: fc.Arbitrary<T>, freq: number): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined, freq });
const rounded = (value: number): number => Math.max(0.1, Math.round(value * 100) / 100);

const noise = fc.record({
  ec: tenths(-0.4, 0.4), ph: tenths(-0.2, 0.2), note: maybe(fc.constantFrom(...remarks), 1),
  gap: fc.integer({ min: 1, max: 5 }),
  missing: maybe(fc.constantFrom("runoffEc", "runoffPh", "inputEc", "inputPh"), 1),
});

const course = fc.record({
  feedEc: tenths(0.2, 4), feedPh: tenths(4.5, 7.5), ec: tenths(0.4, 9), ecSlope: tenths(-0.8, 1),
  ph: tenths(4.2, 7.6), phSlope: tenths(-0.4, 0.4),
  litres: maybe(tenths(0.3, 3), 3), share: fc.constantFrom(0, 0.03, 0.1, 0.2, 0.35, 0.6, 0.8),
  rows: fc.array(noise, { minLength: 1, maxLength: 10 }),
});

/** A pot's log with a course of its own: EC and pH that drift, a feed, volumes or none, remarks, holes. */
export const potLog: fc.Arbitrary<readonly PotReading[]> = course.map((given) => {
  const { feedEc, feedPh, ec, ecSlope, ph, phSlope, litres, share, rows } = given;
  let day = 45_400;
  return rows.map((row, place) => {
    day += row.gap;
    const full: PotReading = {
      day, inputEc: rounded(feedEc + row.ec / 4), inputPh: rounded(feedPh + row.ph / 2), notes: row.note,
      runoffEc: rounded(ec + ecSlope * place + row.ec), runoffPh: rounded(ph + phSlope * place + row.ph),
      ...(litres === undefined ? {} : { inputLitres: litres, runoffLitres: rounded(litres * share) }),
    };
    return row.missing === undefined ? full : { ...full, [row.missing]: undefined };
  });
});

const reading = fc.record({
  inputPh: maybe(tenths(0, 14), 4), inputEc: maybe(tenths(0, 12), 4),
  runoffPh: maybe(tenths(0, 14), 4), runoffEc: maybe(tenths(0, 30), 4),
  inputLitres: maybe(tenths(0, 20), 2), runoffLitres: maybe(tenths(0, 20), 2),
  notes: maybe(fc.constantFrom(...remarks), 1),
});

/** Readings without any sense in them, as a sheet of mistakes has. */
export const wildLog: fc.Arbitrary<readonly PotReading[]> =
  fc.array(reading, { maxLength: 8 }).map((rows) => rows.map((row, place) => ({ ...row, day: 45_400 + 2 * place })));

export const anyLog: fc.Arbitrary<readonly PotReading[]> =
  fc.oneof({ weight: 4, arbitrary: potLog }, { weight: 1, arbitrary: wildLog });

const bands: readonly Band[] = media.flatMap((medium) =>
  feeders.flatMap((feeder) => samples.flatMap((sample) => tells(medium, feeder, sample))));

/** A way of sampling that tells nothing of a medium is refused, and gives no band. */
function tells(medium: Medium, feeder: Feeder, sample: Sample): Band[] {
  try {
    return [bandFor(medium, feeder, sample)];
  } catch (refused) {
    if (refused instanceof Refusal) return [];
    throw refused;
  }
}

/** Every medium, feeder and way of sampling that has limits. */
export const anyBand: fc.Arbitrary<Band> = fc.constantFrom(...bands);
