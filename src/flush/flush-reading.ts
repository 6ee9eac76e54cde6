import { ec25, type Ec25, isPlausible, type Litres, ph, type Ph, quantities } from "../quantities";
import { Refusal } from "../refusal";

/** One row of a flush as it was written: not yet trusted. `undefined` is "not measured". */
export interface FlushReading {
  readonly ph: number | undefined;
  /** mS/cm at 25 C. */
  readonly ec: number | undefined;
  /**
   * Litres of the portion poured before this reading; none for the reading before the flush and for one after a pause.
   */
  readonly litres: Litres | undefined;
}

/** The rows up to the last one that holds anything: rows below it wait to be filled. */
export function untilLastFilled(readings: readonly FlushReading[]): readonly FlushReading[] {
  const filled = readings.map(({ ph, ec, litres }) => ph !== undefined || ec !== undefined || (litres ?? 0) > 0);
  return readings.slice(0, filled.lastIndexOf(true) + 1);
}

/** All the water of these rows, L. */
export const litresPoured = (readings: readonly FlushReading[]): Litres =>
  readings.reduce((sum, { litres }) => sum + (litres ?? 0), 0) as Litres;

/** The pH if it can be believed, otherwise why not. */
export const believablePh = (value: number | undefined): Ph | Refusal => believable(value, "ph", "runoff pH", ph);

/** The EC if it can be believed, otherwise why not. */
export const believableEc = (value: number | undefined): Ec25 | Refusal => believable(value, "ec", "runoff EC", ec25);

/** The EC readings that can be believed, each with its place among the rows. */
export const believableEcs = (
  readings: readonly FlushReading[],
): readonly { readonly row: number; readonly ec: Ec25 }[] =>
  readings.flatMap((reading, row) => {
    const ec = believableEc(reading.ec);
    return ec instanceof Refusal ? [] : [{ row, ec }];
  });

/** In words, the EC readings that were written but are not used. */
export const ecSetAside = (readings: readonly FlushReading[]): readonly string[] =>
  readings.flatMap(({ ec }, row) => {
    const read = believableEc(ec);
    return ec !== undefined && read instanceof Refusal ? [`row ${row + 1} not used: ${read.message}`] : [];
  });

function believable<T extends number>(
  value: number | undefined,
  name: "ph" | "ec",
  called: string,
  check: (value: number, called: string) => T,
): T | Refusal {
  if (value === undefined) return new Refusal("missing", { quantity: called, next: "measure it before pouring more" });
  try {
    const checked = check(value, called);
    if (isPlausible(checked, name)) return checked;
  } catch (problem) {
    if (problem instanceof Refusal) return problem;
    throw problem;
  }
  const { plausible, unit } = quantities[name];
  return new Refusal("implausible", {
    quantity: called,
    given: value,
    unit,
    allowed: `${plausible[0]} to ${plausible[1]}`,
  });
}
