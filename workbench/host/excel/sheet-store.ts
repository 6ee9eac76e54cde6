import type { Area } from "./area";
import type { Line } from "./area-maths";
import type { BookRecords } from "./book-records";

/** A cell as the host hands it over: `""` is a blank, an error is its text (`#VALUE!`). */
export type Scalar = number | string | boolean;

/** What is put into a cell: a value, a blank (`""`), or a formula with its equals sign. */
export type Entry = Scalar | { readonly formula: string };

export type Visibility = "Visible" | "Hidden" | "VeryHidden";

export interface SheetInfo {
  readonly id: string;
  readonly name: string;
  readonly visibility: Visibility;
}

/** How a cell looks; the pane asks for few of the host's many settings. */
export interface CellLook {
  readonly fill?: string;
  readonly color?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly fontName?: string;
  readonly fontSize?: number;
  readonly wrap?: boolean;
  readonly horizontal?: string;
  readonly vertical?: string;
  /** The colour of each edge that is drawn, by the edge's name: `EdgeBottom`. */
  readonly borders?: Readonly<Record<string, string>>;
}

/** A look of which some things may be left open. */
export type OpenLook = { readonly [Key in keyof CellLook]: CellLook[Key] | undefined };

export type StoreEvent =
  | { readonly kind: "changed"; readonly area: Area; readonly by: "person" | "add-in" }
  | { readonly kind: "calculated"; readonly sheetId: string }
  | { readonly kind: "selection" }
  | { readonly kind: "activated"; readonly sheetId: string };

/** Points from the sheet's top left corner. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** All that the Excel-shaped host needs from a grid; everything else it keeps itself, in `records`. */
export interface SheetStore {
  readonly records: BookRecords;

  sheets(): readonly SheetInfo[];
  activeSheetId(): string;
  addSheet(name: string): string;
  deleteSheet(id: string): void;
  renameSheet(id: string, name: string): void;
  activateSheet(id: string): void;
  setVisibility(id: string, visibility: Visibility): void;

  values(area: Area): Scalar[][];
  /** Formulas with their equals sign, elsewhere the value. */
  formulas(area: Area): Scalar[][];
  /** What the cell shows, in its number format. */
  texts(area: Area): string[][];
  /** `undefined` leaves a cell as it is. Text that starts with `=` is text. */
  write(area: Area, cells: readonly (readonly (Entry | undefined)[])[]): void;
  numberFormats(area: Area): string[][];
  setNumberFormats(area: Area, formats: readonly (readonly (string | undefined)[])[]): void;
  look(row: number, column: number, sheetId: string): CellLook;
  setLook(area: Area, look: CellLook | undefined): void;
  /** The smallest area that holds every filled cell (and, unless only values count, every formatted one). */
  filledArea(sheetId: string, onlyValues: boolean): Area | undefined;
  /** The area filled by the formula whose result spills over this cell, its own cell first. */
  spillOver(row: number, column: number, sheetId: string): Area | undefined;

  hidden(sheetId: string, line: Line): ReadonlySet<number>;
  setHidden(area: Area, line: Line, isHidden: boolean): void;
  box(area: Area): Box;
  /** Makes rows so high, or columns so wide. */
  setSize(area: Area, line: Line, points: number): void;
  /** Makes columns as wide as their longest text. */
  fitColumns(area: Area): void;

  selection(): readonly Area[];
  select(areas: readonly Area[]): void;

  /** Waits until every formula has its result. */
  settled(): Promise<void>;
  /** Between start and end all changes form one step of undo. */
  undoGroup(mark: "start" | "end"): void;
  subscribe(listener: (event: StoreEvent) => void): () => void;
}
