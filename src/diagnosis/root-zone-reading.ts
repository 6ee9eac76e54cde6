import { type Ec25, type Ph } from "../quantities";

/** What was poured in and what drained, once; `undefined` is "not measured". A row of a log is one. */
export interface RootZoneReading {
  readonly inputPh?: Ph | undefined;
  /** mS/cm at 25 C. */
  readonly inputEc?: Ec25 | undefined;
  readonly runoffPh?: Ph | undefined;
  /** mS/cm at 25 C. */
  readonly runoffEc?: Ec25 | undefined;
}

/** A reading that says something about the root zone, with its place among those given. */
export interface PlacedReading extends RootZoneReading {
  readonly place: number;
}

/** The readings whose runoff was measured; blank rows, and rows of feed alone, are passed over. */
export function runoffReadings(readings: readonly RootZoneReading[]): readonly PlacedReading[] {
  return readings.flatMap(({ inputPh, inputEc, runoffPh, runoffEc }, place) =>
    runoffPh === undefined && runoffEc === undefined ? [] : [{ inputPh, inputEc, runoffPh, runoffEc, place }],
  );
}
