import type { Area } from "./area";
import { moved } from "./area-maths";
import { removeRecord, type TableRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { EventHandlers } from "./events";
import { HostError } from "./host-error";
import type { Range } from "./range";
import { assertWritable } from "./sheet-access";
import { nameColumns } from "./table-headers";
import { TableColumnCollection } from "./table-columns";
import { TableRowCollection } from "./table-rows";
import { assertTableName } from "./table-names";
import type { Worksheet } from "./worksheet";

const tableProperties: Properties<TableRecord, Table> = {
  id: { get: ({ id }) => id },
  name: {
    get: ({ name }) => name,
    set: (record, name, { context }) => {
      assertTableName(context, String(name));
      record.name = String(name);
      context.records.onChange();
    },
  },
  showTotals: {
    get: ({ showTotals }) => showTotals,
    set: (record, shown, { context }) => { setTotals(record, shown === true, context.records.onChange); },
  },
  showHeaders: { get: () => true },
  showFilterButton: { get: () => false, set: () => undefined },
  showBandedRows: { get: () => true, set: () => undefined },
  style: { get: ({ style }) => style, set: (record, style) => { record.style = String(style); } },
};

function setTotals(record: TableRecord, shown: boolean, onChange: () => void): void {
  if (record.showTotals === shown) return;
  record.showTotals = shown;
  record.area = moved(record.area, 0, 0, shown ? 1 : -1);
  onChange();
}

/** The rows between header and totals. */
export function bodyOf({ area, showTotals }: TableRecord): Area {
  return { ...area, row: area.row + 1, rowCount: Math.max(1, area.rowCount - 1 - (showTotals ? 1 : 0)) };
}

/** A Table of the sheet. */
export class Table extends ClientObject<TableRecord> {
  protected override readonly properties = tableProperties;

  get columns(): TableColumnCollection { return this.inner("columns", () => new TableColumnCollection(this.context, () => this.target)); }
  get rows(): TableRowCollection { return this.inner("rows", () => new TableRowCollection(this.context, () => this.target)); }
  get worksheet(): Worksheet { return this.inner("worksheet", () => this.context.make.worksheet(this.context, () => this.target.area.sheetId)); }
  get onChanged(): EventHandlers {
    return this.inner("onChanged", () => new EventHandlers(this.context, (event) =>
      event.kind === "changed" && event.area.sheetId === this.targetIfAny?.area.sheetId ? { type: "TableChanged", tableId: this.target.id } : undefined));
  }

  getRange(): Range { return this.part(({ area }) => area); }
  getHeaderRowRange(): Range { return this.part(({ area }) => ({ ...area, rowCount: 1 })); }
  getDataBodyRange(): Range { return this.part(bodyOf); }

  getTotalRowRange(): Range {
    return this.part(({ area, showTotals }) => {
      if (!showTotals) throw new HostError("InvalidOperation", "the table shows no totals");
      return { ...area, row: area.row + area.rowCount - 1, rowCount: 1 };
    });
  }

  /** Takes in other cells beside or below; none is moved. */
  resize(range: Range | string): void {
    this.write(() => {
      if (typeof range === "string") throw new HostError("InvalidArgument", "resize takes a range here");
      assertWritable(this.context, this.target.area.sheetId);
      this.target.area = range.target;
      nameColumns(this.context, this.target);
      this.context.records.onChange();
    }, "1.13");
  }

  /** Removes the table and what it held. */
  delete(): void {
    this.write(() => {
      const { area } = this.target;
      assertWritable(this.context, area.sheetId);
      this.context.store.write(area, this.context.store.values(area).map((row) => row.map(() => "")));
      removeRecord(this.context.records.tables, this.target);
      this.context.records.onChange();
    });
  }

  /** Lets the table go and keeps its cells. */
  convertToRange(): Range {
    const range = this.getRange();
    this.write(() => {
      removeRecord(this.context.records.tables, this.target);
      this.context.records.onChange();
    });
    return range;
  }

  private part(find: (record: TableRecord) => Area): Range {
    return this.context.make.range(this.context, () => find(this.target));
  }
}

declareProperties(Table, tableProperties);
