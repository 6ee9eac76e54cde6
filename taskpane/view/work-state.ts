import { type FormulaKind } from "../formulas/computed-columns";
import { type Offer } from "../formulas/offers";
import { type SheetTool } from "../next-thing";
import { type FunctionsState } from "../sheet/functions-alive";

/** What the part of the pane for work on the sheet shows. */
export interface WorkState {
  readonly offers: readonly Offer[];
  readonly ticked: ReadonlySet<string>;
  readonly uncompensated: boolean;
  readonly kind: FormulaKind;
  /** In a Table new rows take the formulas on by themselves. */
  readonly inTable: boolean;
  readonly functions: FunctionsState | undefined;
  /** Whether "keep values only" waits for its second press. */
  readonly isAsking: boolean;
  readonly canTakeBack: boolean;
}

/** What a person can do to the sheet here. */
export interface WorkActions {
  readonly tick: (header: string, on: boolean) => void;
  readonly compensate: (on: boolean) => void;
  readonly choose: (kind: FormulaKind) => void;
  readonly addColumns: () => void;
  readonly turnColumns: () => void;
  readonly addPlantColumns: () => void;
  readonly extend: () => void;
  readonly mark: () => void;
  readonly unmark: () => void;
  readonly newSheet: (tool: SheetTool) => void;
  readonly checkFunctions: () => void;
  readonly reenter: () => void;
  readonly askValuesOnly: (asking: boolean) => void;
  readonly valuesOnly: () => void;
  readonly takeBack: () => void;
}
