import { addressOf, type Area, areaAt } from "./area";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { Collection } from "./collection";
import type { Range } from "./range";
import { sheetOf } from "./sheet-access";
import type { Scalar } from "./sheet-store";

function visibleRows(area: Area, { context }: RangeView): number[] {
  const hidden = context.store.hiddenRows(area.sheetId);
  const filled = context.store.filledArea(area.sheetId, false);
  const end = Math.min(area.row + area.rowCount, Math.max(area.row + 1, filled === undefined ? 0 : filled.row + filled.rowCount));
  return Array.from({ length: end - area.row }, (_, i) => area.row + i).filter((row) => !hidden.has(row));
}

function eachRow<Answer>(area: Area, view: RangeView, read: (row: Area) => readonly (readonly Answer[])[]): Answer[][] {
  const rows = visibleRows(area, view);
  view.context.handOver(rows.length * area.columnCount);
  return rows.map((row) => [...(read(areaAt(area.sheetId, row, area.column, 1, area.columnCount))[0] ?? [])]);
}

const rangeViewProperties: Properties<Area, RangeView> = {
  rowCount: { get: (area, view) => visibleRows(area, view).length },
  columnCount: { get: (area) => area.columnCount },
  values: { get: (area, view) => eachRow<Scalar>(area, view, (row) => view.context.store.values(row)) },
  formulas: { get: (area, view) => eachRow<Scalar>(area, view, (row) => view.context.store.formulas(row)) },
  text: { get: (area, view) => eachRow<string>(area, view, (row) => view.context.store.texts(row)) },
  numberFormat: { get: (area, view) => eachRow<string>(area, view, (row) => view.context.store.numberFormats(row)) },
  cellAddresses: {
    get: (area, view) => visibleRows(area, view).map((row) =>
      Array.from({ length: area.columnCount }, (_, j) =>
        addressOf(areaAt(area.sheetId, row, area.column + j), sheetOf(view.context, area.sheetId).name))),
  },
};

/** The rows of a range that a filter or a person has not hidden. */
export class RangeView extends ClientObject<Area> {
  protected override readonly properties = rangeViewProperties;
  protected override readonly endsWithRun = true;

  get rows(): RangeViewCollection {
    return this.inner("rows", () => new RangeViewCollection(this.context, this));
  }

  getRange(): Range {
    return this.context.make.range(this.context, () => this.target);
  }

  get visibleRowAreas(): readonly Area[] {
    return visibleRows(this.target, this).map((row) => ({ ...this.target, row, rowCount: 1 }));
  }
}

declareProperties(RangeView, rangeViewProperties);

class RangeViewCollection extends Collection<RangeView, Area> {
  constructor(context: RangeView["context"], private readonly owner: RangeView) {
    super(context, () => true);
  }

  getItemAt(index: number): RangeView {
    return new RangeView(this.context, () => this.keys()[index]);
  }

  protected override keys(): readonly Area[] {
    return this.owner.visibleRowAreas;
  }

  protected override itemFor(area: Area): RangeView {
    return new RangeView(this.context, () => area);
  }
}
