import type { Area } from "../excel/area";
import type { BookRecords, ChartRecord, ConditionalFormatRecord, NameRecord, ShapeRecord, TableRecord } from "../excel/book-records";
import { HostError } from "../excel/host-error";
import type { SheetStore } from "../excel/sheet-store";

type OfWorkbook =
  | "Workbook" | "Application" | "Runtime" | "Functions" | "WorksheetCollection" | "NamedItemCollection";
type OfSheet =
  | "Worksheet" | "WorksheetProtection" | "WorksheetFreezePanes" | "PageLayout"
  | "ShapeCollection" | "ChartCollection";
type OfArea =
  | "Range" | "RangeView" | "RangeFormat" | "RangeFill" | "RangeFont" | "RangeBorderCollection" | "DataValidation"
  | "ConditionalFormatCollection";
type OfRule =
  | "ConditionalFormat" | "ConditionalRule" | "CustomConditionalFormat" | "ConditionalFormatRule" | "ConditionalRangeFormat"
  | "ConditionalRangeFill" | "ConditionalRangeFont" | "ConditionalRangeBorderCollection";

export interface KeptOne {
  readonly kept: Map<string, unknown>;
  readonly key: string;
}
type Kept = Record<"SettingCollection" | "WorksheetCustomPropertyCollection", KeptOne["kept"]> & Record<"Setting" | "WorksheetCustomProperty", KeptOne>;

/** Each kind of object of the host that the workbench knows, by the name of its class, and what such an object stands for. */
export type Targets = Record<OfWorkbook, true> & Record<OfSheet, string> & Record<OfArea, Area> & Record<OfRule, ConditionalFormatRecord> & Kept & {
  FunctionResult: number;
  RangeAreas: readonly Area[];
  RangeCollection: readonly Area[];
  RangeBorder: { readonly area: Area; readonly edge: string };
  ConditionalRangeBorder: { readonly record: ConditionalFormatRecord; readonly edge: string };
  /** Of the workbook, of one sheet, or those that touch an area. */
  TableCollection: { readonly sheetId?: string; readonly touching?: Area; readonly fullyContained?: boolean };
  Table: TableRecord;
  TableColumnCollection: TableRecord;
  TableColumn: { readonly table: TableRecord; readonly index: number };
  TableRowCollection: TableRecord;
  TableRow: { readonly table: TableRecord; readonly index: number };
  NamedItem: NameRecord;
  Shape: ShapeRecord;
  Chart: ChartRecord;
  ChartTitle: ChartRecord;
};

export type KindName = keyof Targets;

/** An object of the host: which kind it is, and what it stands for. */
export class HostObject {
  constructor(
    readonly kind: KindName,
    readonly it: unknown,
  ) {}
}

export const object = <Name extends KindName>(kind: Name, it: Targets[Name]): HostObject => new HostObject(kind, it);

/** As `object`; of nothing it makes nothing: the null object of the host. */
export const objectIfAny = <Name extends KindName>(kind: Name, it: Targets[Name] | undefined): HostObject | null =>
  it === undefined ? null : new HostObject(kind, it);

/** What the objects of the host are read from and written to. */
export interface HostDocument {
  readonly store: SheetStore;
  readonly records: BookRecords;
  /** Counts cells handed over in one answer. @throws {HostError} `ResponsePayloadSizeLimitExceeded` */
  handOver(cells: number): void;
}

/** One property: how it is read and how it is written. */
export interface Property<It> {
  readonly get?: (it: It, document: HostDocument) => unknown;
  readonly set?: (it: It, value: unknown, document: HostDocument) => void;
}

type Named<Answer, It> = Readonly<Record<string, (it: It, document: HostDocument, ...given: readonly unknown[]) => Answer>>;

/**
 * All that the workbench knows of one kind, under the names that the host's library uses. An argument that is an object of the
 * host arrives as such. What stands here in no table is an error that names it, never a silent blank.
 */
export interface Kind<It> {
  /** What the library finds the object again by, where no property says it. */
  readonly id?: (it: It) => string | number;
  /** Another name it answers to, whatever the case. */
  readonly alsoCalled?: (it: It, document: HostDocument) => string;
  readonly properties?: Readonly<Record<string, Property<It>>>;
  /** Objects that belong to it. */
  readonly parts?: Named<HostObject | null, It>;
  /** Methods that look something up: an object, nothing, or a plain answer. */
  readonly finds?: Named<unknown, It>;
  /** Methods that change the workbook, with the object they make, if any. */
  readonly acts?: Named<unknown, It>;
  /** Methods that change what is seen, and nothing that a file would keep. */
  readonly shows?: Named<void, It>;
  /** Of a collection: its items in order. */
  readonly items?: (it: It, document: HostDocument) => readonly HostObject[];
}

export type Kinds = { readonly [Name in KindName]: Kind<Targets[Name]> };

/** A property that is set and forgotten: it shows in no grid. */
export const fixed = (value: unknown): Property<unknown> => ({ get: () => value, set: () => undefined });

/** A property that is a field of what the object stands for. */
export const field = <It extends object>(name: keyof It): Property<It> => ({ get: (it) => it[name] });

/** As `field`, and it can be set to another value of its kind; `none` is what it is where the record leaves it. */
export function settable<It extends object>(name: keyof It & string, none?: unknown): Required<Property<It>> {
  return {
    get: (it) => it[name] ?? none,
    set: (it, value, { records }) => {
      if (typeof value !== typeof (it[name] ?? none) || Number.isNaN(value)) throw new HostError("InvalidArgument", name);
      Object.assign(it, { [name]: value });
      records.onChange();
    },
  };
}
