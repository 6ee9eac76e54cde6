import { type Choices, noChoices } from "./choices";
import { type RootZone } from "./root-zone";
import { type LogTab } from "./sheet/log-tabs";
import { type OwnSheet } from "./sheet/own-sheet";
import { type SheetSelection } from "./sheet/read-selection";
import { type SheetPlace } from "./sheet/selected-place";

/** All that the pane remembers while it is open. */
export interface PaneState {
  /** What was read last; it is read again when its sheet changes. */
  readonly place: SheetPlace | undefined;
  readonly selection: SheetSelection | undefined;
  readonly choices: Choices;
  readonly zone: RootZone | undefined;
  readonly following: boolean;
  /** The logs of the book, as last looked for. */
  readonly logs: readonly LogTab[];
  /** A sheet of ours that is in view: it is shown in place of the log. */
  readonly own: OwnSheet | undefined;
}

export const freshPane: PaneState = {
  place: undefined,
  selection: undefined,
  choices: noChoices,
  zone: undefined,
  following: false,
  logs: [],
  own: undefined,
};
