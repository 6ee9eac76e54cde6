import type { Area } from "./area";
import type { TableRecord } from "./book-records";
import type { Range } from "./range";
import type { RangeAreas } from "./range-areas";
import type { RequestContext } from "./request-context";
import type { Table } from "./table";
import type { TableCollection } from "./table-collection";
import type { Worksheet } from "./worksheet";

/** How objects are made that refer to each other in circles (a range knows its sheet, a sheet its ranges). */
export interface ObjectMakers {
  workbook(context: RequestContext): unknown;
  application(context: RequestContext): unknown;
  runtime(context: RequestContext): unknown;
  range(context: RequestContext, lookUp: () => Area | undefined, mayBeAbsent?: boolean): Range;
  rangeAreas(context: RequestContext, lookUp: () => readonly Area[] | undefined, mayBeAbsent?: boolean): RangeAreas;
  worksheet(context: RequestContext, lookUp: () => string | undefined, mayBeAbsent?: boolean): Worksheet;
  table(context: RequestContext, lookUp: () => TableRecord | undefined, mayBeAbsent?: boolean): Table;
  /** The tables of the workbook, or those that `belongs` admits. */
  tables(context: RequestContext, belongs?: (table: TableRecord) => boolean): TableCollection;
}
