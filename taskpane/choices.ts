import {
  type Band,
  bandFor,
  type ColumnAnswer,
  type DateOrder,
  type EcLogUnit,
  ec25,
  type Feeder,
  type Litres,
  litres,
  type LogAnswers,
  type Medium,
  ownBand,
  ph,
  potVolume,
  Refusal,
} from "../src/index";

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

/** The band that the choices name; `undefined` until there is one, or the Refusal that says what is wrong with it. */
export function bandOf({ medium, feeder, own }: Pick<PotChoices, "medium" | "feeder" | "own">): Band | Refusal | undefined {
  if (own === undefined || isBlankLimits(own)) return medium === undefined ? undefined : bandFor(medium, feeder);
  return orRefusal(() => {
    const [phLow = NaN, phHigh = NaN, ecLow = NaN, ecHigh = NaN] =
      limitNames.map((name) => typedNumber(own[name], "a limit", "fill in all four limits, or none"));
    const of = { medium, feeder };
    return ownBand(ph(phLow, "pH low"), ph(phHigh, "pH high"), ec25(ecLow, "EC low"), ec25(ecHigh, "EC high"), of);
  });
}

/** The pot's own volume; `undefined` until it is typed, or the Refusal that says what is wrong with it. */
export function containerOf({ container }: PotChoices): Litres | Refusal | undefined {
  if (container.trim() === "") return undefined;
  return orRefusal(() =>
    potVolume(
      litres(typedNumber(container, "the pot's volume", "a number of litres, or leave it empty"), "the pot's volume"),
    ),
  );
}

function orRefusal<T>(work: () => T): T | Refusal {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof Refusal) return problem;
    throw problem;
  }
}

/** A number in a field of the pane; "5,8" can only be 5.8 there. */
function typedNumber(text: string, quantity: string, next: string): number {
  const tidy = text.trim().replace(",", ".");
  if (/^\d+(\.\d+)?$/.test(tidy)) return Number(tidy);
  throw new Refusal(tidy === "" ? "missing" : "not-a-number", { quantity, given: text, next });
}

/** The answers as the log reader wants them: by column of the grid, here found again by header. */
export function answersFor(choices: Choices, headers: readonly string[]): LogAnswers {
  const columns = Object.fromEntries(
    headerKeys(headers).flatMap((key, column) => {
      const answer = Object.hasOwn(choices.columns, key) ? choices.columns[key] : undefined;
      return answer === undefined ? [] : [[column, answer] as const];
    }),
  );
  const { ppmScale, ecUnit, volumeUnit, temperatureUnit, dateOrder, headerRow } = choices;
  const given = Object.entries({ ppmScale, ecUnit, volumeUnit, temperatureUnit, dateOrder, headerRow });
  return { columns, ...Object.fromEntries(given.filter(([, answer]) => answer !== undefined)) };
}

/** A name for each column that outlives its moving: its header, numbered where headers repeat. */
export function headerKeys(headers: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return headers.map((header) => {
    const name = header.trim().toLowerCase();
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count === 1 ? name : `${name} #${count}`;
  });
}
