import { type Celsius, type Ec25, type Litres, type Percent, type Ph } from "../quantities";

/** What a column of a grower's log can hold, in the order in which it is offered. */
export const logQuantities = [
  "date",
  "time",
  "vessel",
  "input EC",
  "input pH",
  "runoff EC",
  "runoff pH",
  "input volume",
  "runoff volume",
  "solution temperature",
  "air temperature",
  "humidity",
  "new growth",
  "posture",
  "spread of symptoms",
  "roots",
  "notes",
  "other",
] as const;
export type LogQuantity = (typeof logQuantities)[number];

/** What a note says was done to the pot. */
export const deeds = [
  "flush",
  "pH reset",
  "drench",
  "feed change",
  "plain water",
  "tank diluted",
  "tank changed",
  "topped up",
  "calibration",
  "repotting",
  "light change",
  "foliar spray",
] as const;

/** What a note says was seen at the plant, its roots or its pot. */
export const sights = [
  "wilting",
  "drooping",
  "not drinking",
  "tip burn",
  "leaf spots",
  "interveinal yellowing",
  "pale new growth",
  "pale old leaves",
  "pale leaves",
  "purple leaves",
  "dying leaves",
  "blossom end rot",
  "stunted",
  "clean new growth",
  "brown roots",
  "bad smell",
  "pests",
  "light pot",
  "heavy pot",
  "crust",
  "little drain",
  "dripper blocked",
  "twisted growth",
  "slow-release mixed in",
  "slow-release on top",
  "slow-release",
] as const;

export type LogEventKind = (typeof deeds)[number] | (typeof sights)[number];

export interface LogEvent {
  readonly kind: LogEventKind;
  /** The grower's own words. */
  readonly words: string;
}

/** How the plant looks, where the grower keeps columns for it: each 0 (as it should be) to 3 (bad). */
export interface PlantLook {
  /** How sound the newest leaves are. */
  readonly newGrowth?: number | undefined;
  /** From upright to limp. */
  readonly posture?: number | undefined;
  /** How far spots, burn or yellowing have spread. */
  readonly spread?: number | undefined;
  /** From white to brown. */
  readonly roots?: number | undefined;
}

/** One row of the log, understood; `undefined` is "not measured", never 0. */
export interface LogRow {
  /** Which row of the grid it came from, counted from 0. */
  readonly row: number;
  /** Where feed and runoff stand in rows of their own: the feed's row, whose readings stand here too. */
  readonly feedRow?: number | undefined;
  /** Days in the sheet's 1900 date system; the time of day is the fraction. */
  readonly day: number | undefined;
  readonly vessel: string | undefined;
  readonly inputEc: Ec25 | undefined;
  readonly inputPh: Ph | undefined;
  readonly runoffEc: Ec25 | undefined;
  readonly runoffPh: Ph | undefined;
  readonly inputLitres: Litres | undefined;
  readonly runoffLitres: Litres | undefined;
  readonly solutionCelsius: Celsius | undefined;
  readonly airCelsius: Celsius | undefined;
  readonly humidityPercent: Percent | undefined;
  readonly notes: string | undefined;
  readonly events: readonly LogEvent[];
  readonly plant?: PlantLook | undefined;
  /** Figures typed for a pH or an EC that cannot be, in words: they are not used, and say that something went wrong. */
  readonly unread?: readonly string[] | undefined;
}
