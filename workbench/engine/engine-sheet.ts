import type { CellValue } from "../host/functions-host";
import type { Area } from "./areas";

/** What a formula engine is asked and answers, in plain words; rows and columns count from 0. */
export interface EngineCell {
  readonly address: string;
  readonly row: number;
  readonly column: number;
  readonly value?: CellValue | undefined;
  /** In the engine's own dialect: no structured references, no `B2#`. */
  readonly formula?: string;
}
export interface EngineSheet {
  readonly name: string;
  readonly cells: readonly EngineCell[];
}
export interface EngineName {
  readonly name: string;
  readonly refersTo: string;
}
export interface Dependencies {
  readonly formula: number;
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  /** The numbers of the formulas it reads from. */
  readonly readsFrom: readonly number[];
}
export interface EngineAnswer {
  /** The computed value, by the sheet's place in the book. */
  readonly valueAt: (sheet: number, row: number, column: number) => CellValue;
  /** The range that the formula in a cell spills into. */
  readonly spillFrom: (sheet: number, row: number, column: number) => Area | undefined;
  /** What each formula reads from. */
  readonly dependencies: readonly Dependencies[];
}
