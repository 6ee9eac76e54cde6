import { type ColumnAnswer, type DateOrder, type EcLogUnit, type Feeder, type LogAnswers, type Medium } from "../src/index";

/** Limits of the grower's own, as typed; they win over any table once all four are there. */
export interface OwnLimits {
  readonly phLow: string;
  readonly phHigh: string;
  readonly ecLow: string;
  readonly ecHigh: string;
}

export const limitNames = ["phLow", "phHigh", "ecLow", "ecHigh"] as const satisfies readonly (keyof OwnLimits)[];

/** Limits of which nothing is typed are none. */
export const isBlankLimits = (own: OwnLimits): boolean => limitNames.every((name) => own[name].trim() === "");

/** Limits that stood before others took their place; without own ones the medium's stood. */
export interface EarlierLimits {
  readonly own: OwnLimits | undefined;
  /** The sheet's day from which they held; `undefined` from the first row on. */
  readonly since: number | undefined;
}

/** What a person chose for one pot. */
export interface PotChoices {
  readonly medium: Medium | undefined;
  readonly feeder: Feeder;
  readonly own: OwnLimits | undefined;
  /** The sheet's day from which the limits of today hold; `undefined` for all rows. */
  readonly since: number | undefined;
  /** The day of the newest reading when they were typed: until another comes, what is typed is the same change. */
  readonly typedAt: number | undefined;
  /** Oldest first. */
  readonly earlier: readonly EarlierLimits[];
  /** Litres, as typed. */
  readonly container: string;
}

/**
 * What a person chose and answered for one log; kept in the workbook, column answers by header so that columns may
 * move.
 */
export interface Choices {
  /** By pot; what stands under "" holds for every pot without choices of its own. */
  readonly pots: Readonly<Record<string, PotChoices>>;
  readonly vessel: string | undefined;
  readonly columns: Readonly<Record<string, ColumnAnswer>>;
  readonly ppmScale: number | undefined;
  readonly ecUnit: EcLogUnit | undefined;
  readonly volumeUnit: LogAnswers["volumeUnit"];
  readonly temperatureUnit: LogAnswers["temperatureUnit"];
  readonly dateOrder: DateOrder | undefined;
  readonly headerRow: number | undefined;
}

export const noPotChoices: PotChoices = {
  medium: undefined,
  feeder: "medium",
  own: undefined,
  since: undefined,
  typedAt: undefined,
  earlier: [],
  container: "",
};

export const noChoices: Choices = {
  pots: {},
  vessel: undefined,
  columns: {},
  ppmScale: undefined,
  ecUnit: undefined,
  volumeUnit: undefined,
  temperatureUnit: undefined,
  dateOrder: undefined,
  headerRow: undefined,
};

const wholeBench = "";

/** What holds for a pot: its own choices, else those of the whole bench. */
export function potChoices({ pots }: Pick<Choices, "pots">, vessel: string | undefined): PotChoices {
  const name = [vessel ?? wholeBench, wholeBench].find((each) => Object.hasOwn(pots, each));
  return (name === undefined ? undefined : pots[name]) ?? noPotChoices;
}

/**
 * A change for one pot. The first pot that is given a medium gives it to the whole bench, until another pot has its
 * own.
 */
export function forPot(
  choices: Choices,
  vessel: string | undefined,
  change: Partial<PotChoices>,
): Pick<Choices, "pots"> {
  const changed = { ...potChoices(choices, vessel), ...change };
  const bench = Object.hasOwn(choices.pots, wholeBench) ? {} : { [wholeBench]: changed };
  return { pots: { ...choices.pots, ...bench, [vessel ?? wholeBench]: changed } };
}
