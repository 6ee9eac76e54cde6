import type { Area } from "./area";
import type { Box } from "./sheet-store";
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

/** What lies over the cells of a sheet, its place in points. */
interface DrawnRecord extends Box {
  readonly id: string;
  readonly sheetId: string;
  name: string;
}

export interface ShapeRecord extends DrawnRecord {
  /** A PNG or JPEG in base64. */
  readonly content: string;
  altTextTitle: string;
  altTextDescription: string;
  visible: boolean;
}

export interface ChartRecord extends DrawnRecord {
  readonly type: string;
  readonly source: Area;
  title: string;
}

/** A rule and the look it gives, the first of a sheet counting first; which of the fields count follows from `type`. */
export interface ConditionalFormatRecord {
  readonly id: string;
  readonly type: "CellValue" | "ContainsText" | "Custom";
  readonly area: Area;
  rule?: Readonly<Record<string, unknown>>;
  fill?: string;
  color?: string;
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
class SheetRecord {
  protected = false;
  frozen = { rows: 0, columns: 0 };
  pageLayout: Record<string, unknown> = {};
  /** What the add-in keeps with the sheet. */
  readonly custom = new Map<string, unknown>();
}

/** What belongs to the workbook beside its cells. One list each, in the order of making. */
export class BookRecords {
  readonly tables: TableRecord[] = [];
  readonly shapes: ShapeRecord[] = [];
  readonly charts: ChartRecord[] = [];
  readonly conditionalFormats: ConditionalFormatRecord[] = [];
  readonly validations: ValidationRecord[] = [];
  readonly names: NameRecord[] = [];
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
    const record = this.sheetRecords.get(id) ?? new SheetRecord();
    this.sheetRecords.set(id, record);
    return record;
  }

  /** With a sheet goes all that lies on it. */
  forgetSheet(id: string): void {
    for (const list of [this.tables, this.conditionalFormats, this.validations]) this.remove<{ area: Area }>(list, ({ area }) => area.sheetId === id);
    for (const list of [this.shapes, this.charts]) this.remove<{ sheetId: string }>(list, ({ sheetId }) => sheetId === id);
    this.sheetRecords.delete(id);
  }

  /** Puts a record behind those of its list. */
  add<Item>(list: Item[], item: Item): Item {
    list.push(item);
    this.onChange();
    return item;
  }

  /** Takes records out of their list. */
  remove<Item>(list: Item[], isGone: (item: Item) => boolean): void {
    list.splice(0, list.length, ...list.filter((item) => !isGone(item)));
    this.onChange();
  }
}
