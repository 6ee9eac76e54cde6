import { type KeptText } from "../xlsx/spec";
import { type PotCard } from "./bench-sheet";
import { logColumns } from "./log-sheet";

/** The name under which the pane keeps with a sheet what a person answered there. */
const keptName = "RunoffLedger.answers";

/** The answers as the pane keeps them, by the log's headers: what the pot stands in and how much it feeds, for the whole bench. */
export function keptAnswers({ medium, feeder }: PotCard): KeptText {
  const log = logColumns.map(({ header }) => header).join(" | ");
  return { name: keptName, text: JSON.stringify({ [log]: { pots: { "": { medium, feeder } } } }) };
}
