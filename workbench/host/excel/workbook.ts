import { ClientObject, declareProperties, type Properties } from "./client-object";
import { ClientResult } from "./collection";
import { EventHandlers } from "./events";
import { HostError } from "./host-error";
import { NameCollection } from "./name";
import type { Range } from "./range";
import type { RangeAreas } from "./range-areas";
import type { RequestContext } from "./request-context";
import { SettingCollection } from "./setting";
import type { TableCollection } from "./table-collection";
import { WorksheetCollection } from "./worksheet-collection";

const workbookProperties: Properties<true, Workbook> = {
  name: { get: () => "workbench.xlsx" },
  isDirty: { get: () => false },
};

/** The open workbook. */
export class Workbook extends ClientObject<true> {
  protected override readonly properties = workbookProperties;
  readonly worksheets = new WorksheetCollection(this.context);
  readonly names = new NameCollection(this.context);
  readonly settings = new SettingCollection(this.context);
  readonly onSelectionChanged = new EventHandlers(this.context, (event) => (event.kind === "selection" ? { type: "SelectionChanged", workbook: this } : undefined));
  readonly functions = new WorksheetFunctions(this.context);

  constructor(context: RequestContext) {
    super(context, () => true);
  }

  get tables(): TableCollection {
    return this.inner("tables", () => this.context.make.tables(this.context));
  }

  /** The selected cells. @throws {HostError} `InvalidSelection` at the sync when several areas, or none, are selected */
  getSelectedRange(): Range {
    return this.context.make.range(this.context, () => {
      const [area, ...more] = this.context.store.selection();
      if (area === undefined || more.length > 0) throw new HostError("InvalidSelection");
      return area;
    });
  }

  /** Every selected area. @throws {HostError} `InvalidSelection` when no cells are selected, but say a picture */
  getSelectedRanges(): RangeAreas {
    return this.context.make.rangeAreas(this.context, () => {
      const areas = this.context.store.selection();
      if (areas.length === 0) throw new HostError("InvalidSelection");
      return areas;
    });
  }

  getActiveCell(): Range {
    return this.context.make.range(this.context, () => {
      const [area] = this.context.store.selection();
      if (area === undefined) throw new HostError("InvalidSelection");
      return { ...area, rowCount: 1, columnCount: 1 };
    });
  }
}

declareProperties(Workbook, workbookProperties);

const daysFrom1899 = (year: number, month: number, day: number): number => (Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000;
const daysBetweenDateSystems = 1462;

interface FunctionResult {
  readonly value: number;
  load(option?: string): FunctionResult;
}

/** The host's own worksheet functions: only the one that tells which date system the workbook has. */
class WorksheetFunctions {
  constructor(private readonly context: RequestContext) {}

  date(year: number, month: number, day: number): FunctionResult {
    const result = new ClientResult<number>();
    const { records } = this.context;
    return {
      get value() { return result.value; },
      load: () => {
        this.context.enqueue("read", () => {
          result.settle(daysFrom1899(year, month, day) - (records.date1904 ? daysBetweenDateSystems : 0));
        });
        return this.of(result);
      },
    };
  }

  private of(result: ClientResult<number>): FunctionResult {
    return { get value() { return result.value; }, load: () => this.of(result) };
  }
}
