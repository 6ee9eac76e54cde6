import { areaAt } from "./area";
import { ChartCollection } from "./chart";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { changedArgs, EventHandlers } from "./events";
import { FreezePanes, PageLayout, WorksheetProtection } from "./worksheet-parts";
import { HostError } from "./host-error";
import { NameCollection } from "./name";
import type { Range } from "./range";
import type { RangeAreas } from "./range-areas";
import { ShapeCollection } from "./shape";
import { areaCalled, assertWritable, sheetCalled, sheetOf } from "./sheet-access";
import type { Visibility } from "./sheet-store";
import type { TableCollection } from "./table-collection";

const worksheetProperties: Properties<string, Worksheet> = {
  id: { get: (id) => id },
  name: {
    get: (id, { context }) => sheetOf(context, id).name,
    set: (id, name, { context }) => {
      assertSheetName(String(name));
      if (sheetCalled(context, String(name)) !== undefined) throw new HostError("ItemAlreadyExists", String(name));
      context.store.renameSheet(id, String(name));
    },
  },
  position: { get: (id, { context }) => context.store.sheets().findIndex((sheet) => sheet.id === id) },
  visibility: {
    get: (id, { context }) => sheetOf(context, id).visibility,
    set: (id, visibility, { context }) => { context.store.setVisibility(id, visibility as Visibility); },
  },
  tabColor: {
    get: (id, { context }) => context.records.sheet(id).tabColor,
    set: (id, color, { context }) => { context.records.sheet(id).tabColor = String(color); },
  },
  showGridlines: { get: () => true, set: () => undefined },
};

/** One sheet of the workbook. */
export class Worksheet extends ClientObject<string> {
  protected override readonly properties = worksheetProperties;

  get tables(): TableCollection { return this.inner("tables", () => this.context.make.tables(this.context, ({ area }) => area.sheetId === this.target)); }
  get shapes(): ShapeCollection { return this.inner("shapes", () => new ShapeCollection(this.context, () => this.target)); }
  get charts(): ChartCollection { return this.inner("charts", () => new ChartCollection(this.context, () => this.target)); }
  get names(): NameCollection { return this.inner("names", () => new NameCollection(this.context)); }
  get protection(): WorksheetProtection { return this.inner("protection", () => new WorksheetProtection(this.context, () => this.target)); }
  get freezePanes(): FreezePanes { return this.inner("freezePanes", () => new FreezePanes(this.context, () => this.target)); }
  get pageLayout(): PageLayout { return this.inner("pageLayout", () => new PageLayout(this.context, () => this.target)); }

  get onChanged(): EventHandlers {
    return this.inner("onChanged", () => new EventHandlers(this.context, (event) =>
      event.kind === "changed" && event.area.sheetId === this.targetIfAny ? changedArgs(event) : undefined));
  }

  getRange(address?: string): Range {
    const whole = "1:1048576";
    return this.context.make.range(this.context, () => areaCalled(this.context, address ?? whole, this.target));
  }

  getRanges(addresses: string): RangeAreas {
    return this.context.make.rangeAreas(this.context, () => addresses.split(",").map((each) => areaCalled(this.context, each, this.target)));
  }

  getRangeByIndexes(row: number, column: number, rowCount: number, columnCount: number): Range {
    return this.context.make.range(this.context, () => areaAt(this.target, row, column, rowCount, columnCount));
  }

  getCell(row: number, column: number): Range {
    return this.getRangeByIndexes(row, column, 1, 1);
  }

  getUsedRange(valuesOnly = false): Range {
    return this.context.make.range(this.context, () => this.context.store.filledArea(this.target, valuesOnly) ?? areaAt(this.target, 0, 0));
  }

  getUsedRangeOrNullObject(valuesOnly = false): Range {
    return this.context.make.range(this.context, () => this.context.store.filledArea(this.target, valuesOnly), true);
  }

  activate(): void {
    this.write(() => { this.context.store.activateSheet(this.target); });
  }

  delete(): void {
    this.write(() => {
      assertWritable(this.context, this.target);
      const visible = this.context.store.sheets().filter((sheet) => sheet.visibility === "Visible");
      if (visible.length === 1 && visible[0]?.id === this.target) throw new HostError("InvalidOperation", "a workbook keeps one visible sheet");
      this.context.store.deleteSheet(this.target);
    });
  }
}

declareProperties(Worksheet, worksheetProperties);

/** @throws {HostError} `InvalidArgument` on a name the host would not take */
export function assertSheetName(name: string): void {
  if (name.length >= 1 && name.length <= 31 && !/[\\/?*[\]:]/.test(name) && !name.startsWith("'")) return;
  throw new HostError("InvalidArgument", `${name} is no name for a sheet`);
}
