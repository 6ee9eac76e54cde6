import { type Choices } from "../choices";

/** What a person can do in the pane; the view calls these and never touches the sheet itself. */
export interface Actions {
  readonly readSelection: () => void;
  readonly follow: (on: boolean) => void;
  readonly choose: (change: Partial<Choices>) => void;
  readonly goToCell: (row: number, column: number) => void;
  readonly goToRow: (row: number) => void;
  readonly placePicture: () => void;
}
