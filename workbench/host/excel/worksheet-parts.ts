import type { Area } from "./area";
import type { SheetRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import type { Range } from "./range";
import { areaCalled } from "./sheet-access";

const protectionProperties: Properties<string, WorksheetProtection> = {
  protected: { get: (id, { context }) => context.records.sheet(id).protected },
};

/** Whether a person has locked the sheet. */
export class WorksheetProtection extends ClientObject<string> {
  protected override readonly properties = protectionProperties;

  protect(): void {
    this.write(() => { this.context.records.sheet(this.target).protected = true; });
  }

  unprotect(): void {
    this.write(() => { this.context.records.sheet(this.target).protected = false; });
  }
}

declareProperties(WorksheetProtection, protectionProperties);

/** Rows and columns that stay in sight. */
export class FreezePanes extends ClientObject<string> {
  protected override readonly properties = {};

  freezeRows(rows = 1): void { this.freeze({ rows, columns: 0 }); }
  freezeColumns(columns = 1): void { this.freeze({ rows: 0, columns }); }
  unfreeze(): void { this.freeze({ rows: 0, columns: 0 }); }

  freezeAt(range: Range | string): void {
    this.write(() => {
      const area: Area = typeof range === "string" ? areaCalled(this.context, range, this.target) : range.target;
      this.record.frozen = { rows: area.row + area.rowCount, columns: area.column + area.columnCount };
      this.context.records.onChange();
    });
  }

  getLocationOrNullObject(): Range {
    return this.context.make.range(this.context, () => {
      const { rows, columns } = this.record.frozen;
      if (rows + columns === 0) return undefined;
      return { sheetId: this.target, row: 0, column: 0, rowCount: Math.max(rows, 1), columnCount: Math.max(columns, 1) };
    }, true);
  }

  private get record(): SheetRecord {
    return this.context.records.sheet(this.target);
  }

  private freeze(frozen: SheetRecord["frozen"]): void {
    this.write(() => {
      this.record.frozen = frozen;
      this.context.records.onChange();
    });
  }
}

const layoutNames = ["orientation", "paperSize", "printGridlines", "printHeadings", "centerHorizontally", "centerVertically", "zoom"] as const;

const layoutProperties: Properties<string, PageLayout> = Object.fromEntries(
  layoutNames.map((name) => [name, {
    get: (id: string, { context }: PageLayout) => context.records.sheet(id).pageLayout[name],
    set: (id: string, value: unknown, { context }: PageLayout) => { context.records.sheet(id).pageLayout[name] = value; },
  }]),
);

/** How the sheet prints; the stand-in only remembers it. */
export class PageLayout extends ClientObject<string> {
  protected override readonly properties = layoutProperties;

  setPrintArea(range: Range | string): void {
    this.write(() => {
      const area = typeof range === "string" ? areaCalled(this.context, range, this.target) : range.target;
      this.context.records.sheet(this.target).pageLayout["printArea"] = area;
    });
  }

  setPrintTitleRows(rows: Range | string): void {
    this.write(() => {
      const area = typeof rows === "string" ? areaCalled(this.context, rows, this.target) : rows.target;
      this.context.records.sheet(this.target).pageLayout["titleRows"] = area;
    });
  }
}

declareProperties(PageLayout, layoutProperties);
