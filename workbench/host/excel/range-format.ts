import type { Area } from "./area";
import { mapCells } from "./area-maths";
import { ClientObject, declareProperties, type Properties, type Property } from "./client-object";
import type { RequestContext } from "./request-context";
import { assertWritable } from "./sheet-access";
import type { CellLook } from "./sheet-store";

/** The one value that all cells of the area share, `none` where they have none, null where they differ. */
function shared<Value>(context: RequestContext, area: Area, pick: (look: CellLook) => Value | undefined, none: Value): Value | null {
  const filled = context.store.filledArea(area.sheetId, false);
  const rowCount = Math.max(1, Math.min(area.rowCount, (filled?.row ?? 0) + (filled?.rowCount ?? 1) - area.row));
  const each = mapCells({ ...area, rowCount }, (row, column) => pick(context.store.look(row, column, area.sheetId)) ?? none).flat();
  const first = each[0] ?? none;
  return each.every((value) => value === first) ? first : null;
}

/** A property that is one field of the cells' look. */
function look<Key extends keyof CellLook>(key: Key, none: NonNullable<CellLook[Key]>): Property<Area, ClientObject<Area>> {
  return {
    get: (area, { context }) => shared<unknown>(context, area, (each) => each[key], none),
    set: (area, value, { context }) => {
      assertWritable(context, area.sheetId);
      context.store.setLook(area, { [key]: value });
    },
  };
}

const formatProperties: Properties<Area, ClientObject<Area>> = {
  wrapText: look("wrap", false),
  horizontalAlignment: look("horizontal", "General"),
  verticalAlignment: look("vertical", "Bottom"),
  columnWidth: {
    get: (area, { context }) => context.store.box({ ...area, columnCount: 1 }).width,
    set: (area, points, { context }) => {
      assertWritable(context, area.sheetId);
      context.store.setColumnWidth(area, Number(points));
    },
  },
  rowHeight: { get: (area, { context }) => context.store.box({ ...area, rowCount: 1 }).height },
};

/** How the cells of a range look. */
export class RangeFormat extends ClientObject<Area> {
  protected override readonly properties = formatProperties;

  get fill(): RangeFill { return this.inner("fill", () => new RangeFill(this.context, () => this.targetIfAny, true)); }
  get font(): RangeFont { return this.inner("font", () => new RangeFont(this.context, () => this.targetIfAny, true)); }
  get borders(): RangeBorderCollection { return this.inner("borders", () => new RangeBorderCollection(this)); }

  autofitColumns(): void { this.write(() => { this.context.store.fitColumns(this.target); }); }
  autofitRows(): void { this.write(() => undefined); }
}

declareProperties(RangeFormat, formatProperties);

const fillProperties: Properties<Area, ClientObject<Area>> = { color: look("fill", "#FFFFFF") };

class RangeFill extends ClientObject<Area> {
  protected override readonly properties = fillProperties;
  clear(): void { this.write(() => { this.context.store.setLook(this.target, { fill: "" }); }); }
}

declareProperties(RangeFill, fillProperties);

const fontProperties: Properties<Area, ClientObject<Area>> = {
  color: look("color", "#000000"),
  bold: look("bold", false),
  italic: look("italic", false),
  name: look("fontName", "Calibri"),
  size: look("fontSize", 11),
};

class RangeFont extends ClientObject<Area> {
  protected override readonly properties = fontProperties;
}

declareProperties(RangeFont, fontProperties);

/** `getItem("EdgeBottom")` and its like. */
class RangeBorderCollection {
  constructor(private readonly format: RangeFormat) {}

  getItem(edge: string): RangeBorder {
    return new RangeBorder(this.format, edge);
  }
}

const borderProperties: Properties<Area, RangeBorder> = {
  color: { set: (area, color, border) => { border.draw(area, String(color)); } },
  style: { set: (area, style, border) => { border.draw(area, style === "None" ? "" : "#000000"); } },
  weight: { set: () => undefined },
};

class RangeBorder extends ClientObject<Area> {
  protected override readonly properties = borderProperties;

  constructor(format: RangeFormat, private readonly edge: string) {
    super(format.context, () => format.targetIfAny, true);
  }

  draw(area: Area, color: string): void {
    assertWritable(this.context, area.sheetId);
    this.context.store.setLook(area, { borders: { [this.edge]: color } });
  }
}

declareProperties(RangeBorder, borderProperties);
