import { type Area, sheetColumns, sheetRows } from "./area";
import { bounding, intersection, moved } from "./area-maths";
import { ClientObject, declareProperties } from "./client-object";
import { ConditionalFormatCollection } from "./conditional-format-collection";
import { DataValidation } from "./data-validation";
import { HostError } from "./host-error";
import { RangeFormat } from "./range-format";
import { rangeProperties } from "./range-properties";
import { RangeView } from "./range-view";
import { areaCalled, assertWritable } from "./sheet-access";
import { surroundingRegion } from "./surrounding-region";
import type { TableCollection } from "./table-collection";
import type { Worksheet } from "./worksheet";

/** A rectangle of cells. */
export class Range extends ClientObject<Area> {
  protected override readonly properties = rangeProperties;
  protected override readonly endsWithRun = true;

  get format(): RangeFormat { return this.inner("format", () => new RangeFormat(this.context, () => this.targetIfAny, true)); }
  get conditionalFormats(): ConditionalFormatCollection {
    return this.inner("conditionalFormats", () => new ConditionalFormatCollection(this.context, () => this.target));
  }

  get dataValidation(): DataValidation { return this.inner("dataValidation", () => new DataValidation(this.context, () => this.target)); }
  get worksheet(): Worksheet { return this.inner("worksheet", () => this.context.make.worksheet(this.context, () => this.target.sheetId)); }

  getCell(row: number, column: number): Range { return this.derived((area) => ({ ...moved(area, row, column), rowCount: 1, columnCount: 1 })); }
  getRow(row: number): Range { return this.inside((area) => ({ ...moved(area, row, 0), rowCount: 1 }), (area) => row < area.rowCount); }
  getColumn(column: number): Range {
    return this.inside((area) => ({ ...moved(area, 0, column), columnCount: 1 }), (area) => column < area.columnCount);
  }

  getEntireColumn(): Range { return this.derived((area) => ({ ...area, row: 0, rowCount: sheetRows })); }
  getEntireRow(): Range { return this.derived((area) => ({ ...area, column: 0, columnCount: sheetColumns })); }
  getOffsetRange(rows: number, columns: number): Range { return this.derived((area) => moved(area, rows, columns)); }
  getResizedRange(rows: number, columns: number): Range { return this.derived((area) => moved(area, 0, 0, rows, columns)); }
  getAbsoluteResizedRange(rows: number, columns: number): Range {
    return this.derived((area) => moved(area, 0, 0, rows - area.rowCount, columns - area.columnCount));
  }

  getLastRow(): Range { return this.derived((area) => ({ ...area, row: area.row + area.rowCount - 1, rowCount: 1 })); }
  getLastColumn(): Range { return this.derived((area) => ({ ...area, column: area.column + area.columnCount - 1, columnCount: 1 })); }
  getRowsBelow(count = 1): Range { return this.derived((area) => ({ ...moved(area, area.rowCount, 0), rowCount: count })); }
  getColumnsAfter(count = 1): Range { return this.derived((area) => ({ ...moved(area, 0, area.columnCount), columnCount: count })); }
  getBoundingRect(other: Range | string): Range { return this.derived((area) => bounding(area, this.area(other))); }
  getSurroundingRegion(): Range { return this.derived((area) => surroundingRegion(this.context.store, area)); }

  getIntersection(other: Range | string): Range { return this.derived((area) => intersection(area, this.area(other))); }
  getIntersectionOrNullObject(other: Range | string): Range { return this.derived((area) => intersection(area, this.area(other)), true); }
  getUsedRange(valuesOnly = false): Range { return this.derived((area) => this.used(area, valuesOnly) ?? { ...area, rowCount: 1, columnCount: 1 }); }
  getUsedRangeOrNullObject(valuesOnly = false): Range { return this.derived((area) => this.used(area, valuesOnly), true); }

  getSpillingToRange(): Range { return this.spilling(false); }
  getSpillingToRangeOrNullObject(): Range { return this.spilling(true); }
  getSpillParentOrNullObject(): Range {
    this.context.needs("1.12", "Range.getSpillParentOrNullObject");
    return this.derived((area) => {
      const spill = this.context.store.spillOver(area.row, area.column, area.sheetId);
      return spill === undefined ? undefined : { ...spill, rowCount: 1, columnCount: 1 };
    }, true);
  }

  /** Tables that touch the range, or lie wholly inside it. */
  getTables(fullyContained = false): TableCollection {
    return this.context.make.tables(this.context, (table) => {
      const shared = intersection(table.area, this.target);
      return shared !== undefined && (!fullyContained || (shared.rowCount === table.area.rowCount && shared.columnCount === table.area.columnCount));
    });
  }

  getVisibleView(): RangeView { return new RangeView(this.context, () => this.target); }

  select(): void { this.write(() => { this.context.store.select([this.target]); }); }

  clear(applyTo = "All"): void {
    this.write(() => {
      const { store } = this.context;
      assertWritable(this.context, this.target.sheetId);
      if (applyTo !== "Formats") store.write(this.target, Array.from(store.values(this.target), (row) => row.map(() => "")));
      if (applyTo !== "Contents") store.setLook(this.target, undefined);
    });
  }

  private area(other: Range | string): Area {
    return typeof other === "string" ? areaCalled(this.context, other, this.target.sheetId) : other.target;
  }

  private used(area: Area, valuesOnly: boolean): Area | undefined {
    const filled = this.context.store.filledArea(area.sheetId, valuesOnly);
    return filled === undefined ? undefined : intersection(filled, area);
  }

  private spilling(mayBeAbsent: boolean): Range {
    this.context.needs("1.12", "Range.getSpillingToRange");
    return this.derived((area) => {
      const spill = this.context.store.spillOver(area.row, area.column, area.sheetId);
      return spill?.row === area.row && spill.column === area.column ? spill : undefined;
    }, mayBeAbsent);
  }

  private inside(find: (area: Area) => Area, exists: (area: Area) => boolean): Range {
    return this.derived((area) => {
      if (!exists(area)) throw new HostError("InvalidArgument", "outside the range");
      return find(area);
    });
  }

  /** A range found from this one; from a null object comes a null object. */
  private derived(find: (area: Area) => Area | undefined, mayBeAbsent = false): Range {
    return this.context.make.range(this.context, () => find(this.target), mayBeAbsent);
  }
}

declareProperties(Range, rangeProperties);
