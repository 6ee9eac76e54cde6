import { feeders, media } from "../src/index";
import { type Choices, noChoices, noPotChoices, type PotChoices } from "./choices";
import { type PaneState } from "./pane-state";
import { headersOf } from "./root-zone";
import { keep, kept } from "./sheet/keep";
import { type SheetSelection } from "./sheet/read-selection";

/** Answers belong to a sheet and its headers: under this name the workbook keeps them. */
const nameOfLog = (selection: SheetSelection): string => `${selection.sheetId} ${headersOf(selection).join(" | ")}`;

/** The choices of the moment while the log is the same, else what was chosen for it before in this workbook. */
export async function choicesFor(selection: SheetSelection, { selection: before, choices }: PaneState): Promise<Choices> {
  if (before !== undefined && nameOfLog(before) === nameOfLog(selection)) return choices;
  return asChoices(await kept(nameOfLog(selection)));
}

export const keepChoices = (selection: SheetSelection, choices: Choices): Promise<void> => keep(nameOfLog(selection), choices);

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null && !Array.isArray(value);

/** What was kept, as far as this version understands it: another version's words are asked again, never trusted. */
export function asChoices(value: unknown): Choices {
  if (!isRecord(value)) return noChoices;
  const pots = isRecord(value["pots"]) ? Object.entries(value["pots"]).map(([pot, chosen]) => [pot, asPotChoices(chosen)] as const) : [];
  const columns = isRecord(value["columns"]) ? (value["columns"] as Choices["columns"]) : {};
  return { ...noChoices, ...(value as Partial<Choices>), pots: Object.fromEntries(pots), columns };
}

function asPotChoices(value: unknown): PotChoices {
  if (!isRecord(value)) return noPotChoices;
  const { own } = value;
  return {
    medium: media.find((each) => each === value["medium"]),
    feeder: feeders.find((each) => each === value["feeder"]) ?? noPotChoices.feeder,
    own: isRecord(own) && ["phLow", "phHigh", "ecLow", "ecHigh"].every((limit) => typeof own[limit] === "string")
      ? (own as unknown as NonNullable<PotChoices["own"]>) : undefined,
  };
}
