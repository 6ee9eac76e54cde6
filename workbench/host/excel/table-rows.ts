import type { Area } from "./area";
import { moved } from "./area-maths";
import type { TableRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { Collection } from "./collection";
import { HostError } from "./host-error";
import type { Range } from "./range";
import type { RequestContext } from "./request-context";
import { assertWritable } from "./sheet-access";
import { matrixFor } from "./typed-cell";

const rowProperties: Properties<Area, TableRow> = {
  values: { get: (area, { context }) => context.store.values(area) },
};

class TableRow extends ClientObject<Area> {
  protected override readonly properties = rowProperties;
  getRange(): Range { return this.context.make.range(this.context, () => this.target); }
}

declareProperties(TableRow, rowProperties);

/** The rows of a table between header and totals. */
export class TableRowCollection extends Collection<TableRow, Area> {
  constructor(context: RequestContext, private readonly table: () => TableRecord) {
    super(context, () => true);
  }

  /** New rows below the last; the cells there have to be blank. */
  add(index: number | null | undefined, values: unknown): TableRow {
    let made: Area | undefined;
    this.write(() => {
      const table = this.table();
      assertWritable(this.context, table.area.sheetId);
      if (typeof index === "number" && index >= 0 && index < this.keys().length) {
        throw new HostError("UnsupportedOperation", "the stand-in adds rows at the end only");
      }
      if (table.showTotals) throw new HostError("UnsupportedOperation", "the stand-in adds no rows above totals");
      const count = Array.isArray(values) ? values.length : 1;
      const area = { ...moved(table.area, table.area.rowCount, 0), rowCount: count };
      if (this.context.store.values(area).flat().some((value) => value !== "")) throw new HostError("InvalidOperation", "the rows below the table are not blank");
      this.context.store.write(area, matrixFor(area, values));
      table.area = { ...table.area, rowCount: table.area.rowCount + count };
      this.context.records.onChange();
      made = area;
    });
    return new TableRow(this.context, () => made);
  }

  getItemAt(index: number): TableRow {
    return new TableRow(this.context, () => this.keys()[index]);
  }

  protected override keys(): readonly Area[] {
    const { area, showTotals } = this.table();
    const count = area.rowCount - 1 - (showTotals ? 1 : 0);
    return Array.from({ length: count }, (_, i) => ({ ...area, row: area.row + 1 + i, rowCount: 1 }));
  }

  protected override itemFor(area: Area): TableRow {
    return new TableRow(this.context, () => area);
  }
}
