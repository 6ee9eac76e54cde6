import type { Area } from "./area";
import { intersection } from "./area-maths";
import type { TableRecord } from "./book-records";
import { Collection } from "./collection";
import { HostError } from "./host-error";
import type { Range } from "./range";
import type { RequestContext } from "./request-context";
import { areaCalled, assertWritable } from "./sheet-access";
import type { Table } from "./table";

/** The tables of a workbook, a sheet, or a range. */
export class TableCollection extends Collection<Table, TableRecord> {
  constructor(context: RequestContext, private readonly belongs: (table: TableRecord) => boolean = () => true) {
    super(context, () => true);
  }

  /** Makes a table of cells whose first row holds the headers. */
  add(address: Range | string, hasHeaders: boolean): Table {
    let made: TableRecord | undefined;
    this.write(() => {
      const { context } = this;
      const area = typeof address === "string" ? areaCalled(context, address, context.store.activeSheetId()) : address.target;
      assertWritable(context, area.sheetId);
      if (!hasHeaders) throw new HostError("UnsupportedOperation", "the stand-in makes tables with a header row only");
      assertFree(context, area);
      const columns = (context.store.texts({ ...area, rowCount: 1 })[0] ?? []).map((text, i) => (text === "" ? `Column${i + 1}` : text));
      const id = context.records.newId("table");
      made = { id, name: `Table${context.records.tables.length + 1}`, area, columns, showTotals: false, style: "TableStyleMedium2" };
      context.records.tables.push(made);
      context.records.onChange();
    });
    return this.context.make.table(this.context, () => made);
  }

  getItem(nameOrId: string): Table {
    return this.context.make.table(this.context, () => this.called(nameOrId));
  }

  getItemOrNullObject(nameOrId: string): Table {
    return this.context.make.table(this.context, () => this.called(nameOrId), true);
  }

  getItemAt(index: number): Table {
    return this.context.make.table(this.context, () => this.keys()[index]);
  }

  getFirst(): Table {
    return this.getItemAt(0);
  }

  protected override keys(): readonly TableRecord[] {
    return this.context.records.tables.filter(this.belongs);
  }

  protected override itemFor(record: TableRecord): Table {
    return this.context.make.table(this.context, () => record);
  }

  private called(nameOrId: string): TableRecord | undefined {
    return this.keys().find(({ id, name }) => id === nameOrId || name.toLowerCase() === nameOrId.toLowerCase());
  }
}

function assertFree(context: RequestContext, area: Area): void {
  const taken = context.records.tables.some((table) => intersection(table.area, area) !== undefined);
  if (taken) throw new HostError("InvalidArgument", "a table is there already");
}
