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

interface ColumnKey {
  readonly table: TableRecord;
  readonly index: number;
}

const columnProperties: Properties<ColumnKey, TableColumn> = {
  name: { get: ({ table, index }) => table.columns[index] },
  index: { get: ({ index }) => index },
  id: { get: ({ index }) => index + 1 },
  values: { get: (key, { context }) => context.store.values(columnArea(key)) },
};

function columnArea({ table, index }: ColumnKey): Area {
  return { ...table.area, column: table.area.column + index, columnCount: 1 };
}

export class TableColumn extends ClientObject<ColumnKey> {
  protected override readonly properties = columnProperties;

  getRange(): Range { return this.context.make.range(this.context, () => columnArea(this.target)); }
  getHeaderRowRange(): Range { return this.context.make.range(this.context, () => ({ ...columnArea(this.target), rowCount: 1 })); }
  getDataBodyRange(): Range {
    return this.context.make.range(this.context, () => {
      const area = columnArea(this.target);
      return { ...area, row: area.row + 1, rowCount: area.rowCount - 1 - (this.target.table.showTotals ? 1 : 0) };
    });
  }
}

declareProperties(TableColumn, columnProperties);

/** The columns of a table, from the left. */
export class TableColumnCollection extends Collection<TableColumn, ColumnKey> {
  constructor(context: RequestContext, private readonly table: () => TableRecord) {
    super(context, () => true);
  }

  /** A new column at the table's right side; the cells there have to be blank. The first value is the header. */
  add(index?: number | null, values?: unknown[][] | null, name?: string): TableColumn {
    let made: ColumnKey | undefined;
    this.write(() => {
      const table = this.table();
      if (index !== undefined && index !== null && index !== -1 && index !== table.columns.length) {
        throw new HostError("UnsupportedOperation", "the stand-in adds columns at the end only");
      }
      made = addColumn(this.context, table, values ?? undefined, name);
    });
    return new TableColumn(this.context, () => made);
  }

  getItem(nameOrIndex: string | number): TableColumn { return new TableColumn(this.context, () => this.called(nameOrIndex)); }
  getItemOrNullObject(nameOrIndex: string | number): TableColumn { return new TableColumn(this.context, () => this.called(nameOrIndex), true); }
  getItemAt(index: number): TableColumn { return new TableColumn(this.context, () => this.keys()[index]); }

  protected override keys(): readonly ColumnKey[] {
    const table = this.table();
    return table.columns.map((_, index) => ({ table, index }));
  }

  protected override itemFor(key: ColumnKey): TableColumn {
    return new TableColumn(this.context, () => key);
  }

  private called(nameOrId: string | number): ColumnKey | undefined {
    const keys = this.keys();
    return typeof nameOrId === "number" ? keys[nameOrId - 1] : keys.find(({ table, index }) => table.columns[index]?.toLowerCase() === nameOrId.toLowerCase());
  }
}

function addColumn(context: RequestContext, table: TableRecord, values: unknown[][] | undefined, name: string | undefined): ColumnKey {
  assertWritable(context, table.area.sheetId);
  const index = table.columns.length;
  const area = { ...moved(table.area, 0, index), columnCount: 1 };
  if (context.store.values(area).flat().some((value) => value !== "")) {
    throw new HostError("InvalidOperation", "the stand-in does not move cells aside: the column beside the table is not blank");
  }
  const cells = values === undefined ? undefined : matrixFor(area, values);
  const header = name ?? String(cells?.[0]?.[0] ?? `Column${index + 1}`);
  if (table.columns.some((column) => column.toLowerCase() === header.toLowerCase())) throw new HostError("InvalidArgument", `the table has a column ${header}`);
  table.area = { ...table.area, columnCount: table.area.columnCount + 1 };
  table.columns.push(header);
  context.records.onChange();
  context.store.write(area, [[header], ...(cells?.slice(1) ?? [])].concat(Array.from({ length: area.rowCount - (cells?.length ?? 1) }, () => [undefined])));
  return { table, index };
}
