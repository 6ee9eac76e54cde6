import { feeders, logQuantities, media } from "../src/index";
import { type Choices, type EarlierLimits, limitNames, noChoices, noPotChoices, type OwnLimits, type PotChoices } from "./choices";
import { headersOf } from "./headers";
import { type PaneState } from "./pane-state";
import { keep, kept } from "./sheet/keep";
import { type SheetSelection } from "./sheet/read-selection";

/** Answers belong to a sheet and its headers: under this name the sheet keeps them. */
const nameOfLog = (selection: SheetSelection): string => headersOf(selection).join(" | ");
const isSameLog = (a: SheetSelection, b: SheetSelection): boolean =>
  a.sheetId === b.sheetId && nameOfLog(a) === nameOfLog(b);

/** The choices of the moment while the log is the same, else what was chosen for it before in this workbook. */
export async function choicesFor(
  selection: SheetSelection,
  { selection: before, choices }: PaneState,
): Promise<Choices> {
  if (before !== undefined && isSameLog(before, selection)) return choices;
  return asChoices(await kept(selection, nameOfLog(selection)));
}

export const keepChoices = (selection: SheetSelection, choices: Choices): Promise<void> =>
  keep(selection, nameOfLog(selection), choices);

type Test = (value: unknown) => boolean;

const oneOf = (...words: readonly unknown[]): Test => (value) => words.includes(value);
const isText: Test = (value) => typeof value === "string";
const isWhole: Test = (value) => Number.isInteger(value);
const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What each choice can be in this version: another version, or another program, may have kept something else. */
const fits: Readonly<Record<keyof Choices, Test>> = {
  pots: isRecord,
  vessel: isText,
  columns: (value) =>
    isRecord(value) &&
    Object.values(value).every((answer) => isRecord(answer) && oneOf(...logQuantities)(answer["quantity"])),
  ppmScale: (value) => typeof value === "number" && value >= 400 && value <= 1000,
  ecUnit: isText,
  volumeUnit: isText,
  temperatureUnit: oneOf("C", "F"),
  dateOrder: oneOf("day first", "month first"),
  headerRow: isWhole,
};

/** What was kept, as far as this version understands it: what does not fit is asked again, never trusted. */
export function asChoices(found: unknown): Choices {
  if (!isRecord(found)) return noChoices;
  const good = Object.entries(fits).filter(([name, test]) => Object.hasOwn(found, name) && test(found[name]));
  const choices: Choices = { ...noChoices, ...Object.fromEntries(good.map(([name]) => [name, found[name]])) };
  return {
    ...choices,
    pots: Object.fromEntries(Object.entries(choices.pots).map(([pot, chosen]) => [pot, asPotChoices(chosen)])),
  };
}

function asPotChoices(value: unknown): PotChoices {
  if (!isRecord(value)) return noPotChoices;
  const { container, earlier } = value;
  return {
    medium: media.find((each) => each === value["medium"]),
    feeder: feeders.find((each) => each === value["feeder"]) ?? noPotChoices.feeder,
    ...asLimits(value),
    typedAt: asDay(value["typedAt"]),
    earlier: Array.isArray(earlier) ? earlier.filter(isRecord).map(asLimits) : [],
    container: typeof container === "string" ? container : "",
  };
}

const asDay = (value: unknown): number | undefined => (Number.isInteger(value) ? (value as number) : undefined);

/** Limits with the day from which they hold; those that an earlier version kept have none, and hold for all rows. */
function asLimits({ own, since }: Readonly<Record<string, unknown>>): EarlierLimits {
  const isOwn = isRecord(own) && limitNames.every((limit) => isText(own[limit]));
  return { own: isOwn ? (own as unknown as OwnLimits) : undefined, since: asDay(since) };
}
