import type { Area } from "./area";
import { type HostSwitches, noFailure } from "./switches";

export interface TableRecord {
  readonly id: string;
  name: string;
  /** Header row and totals row included. */
  area: Area;
  columns: string[];
  showTotals: boolean;
  style: string;
}

export interface ShapeRecord {
  readonly id: string;
  readonly sheetId: string;
  /** A PNG or JPEG in base64. */
  readonly content: string;
  name: string;
  altTextTitle: string;
  altTextDescription: string;
  left: number;
  top: number;
  width: number;
  height: number;
  visible: boolean;
}

export interface ChartRecord {
  readonly id: string;
  readonly sheetId: string;
  readonly type: string;
  readonly source: Area;
  name: string;
  title: string;
  left: number;
  top: number;
  width: number;
  height: number;
}

/** A rule and the look it gives, the first of a sheet counting first; which of the fields count follows from `type`. */
export interface ConditionalFormatRecord {
  readonly id: string;
  readonly type: "CellValue" | "ContainsText" | "Custom";
  readonly area: Area;
  rule: Readonly<Record<string, unknown>> | undefined;
  fill: string | undefined;
  color: string | undefined;
  bold?: boolean;
  italic?: boolean;
  /** The line at each edge that is drawn, by the edge's name: `EdgeTop`. */
  borders?: Readonly<Record<string, string>>;
  stopIfTrue: boolean;
}

export interface ValidationRecord {
  readonly area: Area;
  rule: Readonly<Record<string, unknown>>;
  prompt: Readonly<Record<string, unknown>>;
  errorAlert: Readonly<Record<string, unknown>>;
}

export interface NameRecord {
  readonly id: string;
  readonly name: string;
  /** With the equals sign: `=Log!$D$2`. */
  formula: string;
  comment: string;
}

/** Settings of one sheet that no grid has to know. */
export interface SheetRecord {
  protected: boolean;
  frozen: { rows: number; columns: number };
  pageLayout: Record<string, unknown>;
  tabColor: string;
  /** What the add-in keeps with the sheet. */
  readonly custom: Map<string, string>;
}

/** What belongs to the workbook beside its cells. One list each, in the order of making. */
export class BookRecords {
  readonly tables: TableRecord[] = [];
  readonly shapes: ShapeRecord[] = [];
  readonly charts: ChartRecord[] = [];
  readonly conditionalFormats: ConditionalFormatRecord[] = [];
  readonly validations: ValidationRecord[] = [];
  readonly names: NameRecord[] = [];
  /** Cells made one by a person. */
  readonly merged: Area[] = [];
  readonly settings = new Map<string, unknown>();
  readonly switches: HostSwitches = { ...noFailure };
  date1904 = false;
  /** Whether the add-in wants to be told of events. */
  eventsEnabled = true;
  /** Called after any of the lists changed, so that a grid can draw it. */
  onChange: () => void = () => undefined;

  private readonly sheetRecords = new Map<string, SheetRecord>();
  private count = 0;

  newId(kind: string): string {
    this.count += 1;
    return `${kind}-${this.count}`;
  }

  sheet(id: string): SheetRecord {
    const known = this.sheetRecords.get(id);
    if (known !== undefined) return known;
    const fresh: SheetRecord = { protected: false, frozen: { rows: 0, columns: 0 }, pageLayout: {}, tabColor: "", custom: new Map() };
    this.sheetRecords.set(id, fresh);
    return fresh;
  }

  /** With a sheet goes all that lies on it. */
  forgetSheet(id: string): void {
    for (const list of [this.tables, this.conditionalFormats, this.validations]) keepOnly<{ area: Area }>(list, ({ area }) => area.sheetId !== id);
    for (const list of [this.shapes, this.charts, this.merged]) keepOnly<{ sheetId: string }>(list, ({ sheetId }) => sheetId !== id);
    this.sheetRecords.delete(id);
  }
}

function keepOnly<Item>(list: Item[], isKept: (item: Item) => boolean): void {
  list.splice(0, list.length, ...list.filter(isKept));
}

/** Takes one record out of its list. */
export function removeRecord<Item>(list: Item[], item: Item): void {
  const place = list.indexOf(item);
  if (place >= 0) list.splice(place, 1);
}
