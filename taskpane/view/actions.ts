import { type Choices, type PotChoices } from "../choices";
import { type Tool } from "../next-thing";
import { type LogTab } from "../sheet/log-tabs";

/** What a person can do in the pane; the view calls these and never touches the sheet itself. */
export interface Actions {
  readonly readSelection: () => void;
  readonly follow: (on: boolean) => void;
  readonly choose: (change: Partial<Choices>) => void;
  /** For the pot shown, and for the whole bench until another pot has choices of its own. */
  readonly chooseForPot: (change: Partial<PotChoices>) => void;
  readonly goToCell: (row: number, column: number, at: string) => void;
  readonly goToRow: (row: number, at: string) => void;
  /** Shows another log of the book. */
  readonly openLog: (log: LogTab) => void;
  readonly placePicture: () => void;
  /** Shows the present state again. */
  readonly redraw: () => void;
  /** Opens what carries out the next step. */
  readonly open: (tool: Tool) => void;
}
