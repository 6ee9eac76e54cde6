import { type RootZoneReading } from "./row-flags";

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
