import type { Area } from "../excel/area";
import { firstCell, type Line, mapCells } from "../excel/area-maths";
import { assertWritable } from "../excel/sheet-access";
import type { CellLook } from "../excel/sheet-store";
import { fixed, type HostDocument, type Kinds, object, type Property, type Targets } from "./kind";

/** The one value that all cells of the area share, `none` where they have none, null where they differ. */
function shared(area: Area, { store }: HostDocument, pick: (look: CellLook) => unknown, none: unknown): unknown {
  const filled = store.filledArea(area.sheetId, false);
  const rowCount = Math.max(1, Math.min(area.rowCount, (filled?.row ?? 0) + (filled?.rowCount ?? 1) - area.row));
  const each = mapCells({ ...area, rowCount }, (row, column) => pick(store.look(row, column, area.sheetId)) ?? none).flat();
  const first = each[0] ?? none;
  return each.every((value) => value === first) ? first : null;
}

function give(area: Area, document: HostDocument, look: CellLook): void {
  assertWritable(document, area.sheetId);
  document.store.setLook(area, look);
}

/** A property that is one field of the cells' look. */
const look = <Key extends keyof CellLook>(key: Key, none: NonNullable<CellLook[Key]>): Property<Area> => ({
  get: (area, document) => shared(area, document, (each) => each[key], none),
  set: (area, value, document) => { give(area, document, { [key]: value }); },
});

/** The size of the first row or column. */
const size = (line: Line, side: "height" | "width"): Property<Area> => ({
  get: (area, { store }) => store.box(firstCell(area))[side],
  set: (area, points, document) => {
    assertWritable(document, area.sheetId);
    document.store.setSize(area, line, Number(points));
  },
});

const ink = "#000000";
const draw = ({ area, edge }: Targets["RangeBorder"], color: string, document: HostDocument): void => {
  give(area, document, { borders: { [edge]: color } });
};
const drawn = ({ area, edge }: Targets["RangeBorder"], document: HostDocument): unknown =>
  shared(area, document, ({ borders }) => borders?.[edge], "");

const edges = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", "InsideHorizontal", "InsideVertical"];

/** How the cells of a range look. */
export const formatKinds = {
  RangeFormat: {
    properties: {
      wrapText: look("wrap", false),
      horizontalAlignment: look("horizontal", "General"),
      verticalAlignment: look("vertical", "Bottom"),
      columnWidth: size("column", "width"),
      rowHeight: size("row", "height"),
    },
    parts: {
      fill: (area) => object("RangeFill", area),
      font: (area) => object("RangeFont", area),
      borders: (area) => object("RangeBorderCollection", area),
    },
    acts: {
      autofitColumns: (area, document) => {
        assertWritable(document, area.sheetId);
        document.store.fitColumns(area);
      },
    },
  },
  RangeFill: {
    properties: { color: look("fill", "#FFFFFF") },
    acts: { clear: (area, document) => { give(area, document, { fill: "" }); } },
  },
  RangeFont: {
    properties: {
      color: look("color", ink),
      bold: look("bold", false),
      italic: look("italic", false),
      name: look("fontName", "Calibri"),
      size: look("fontSize", 11),
    },
  },
  RangeBorderCollection: { items: (area) => edges.map((edge) => object("RangeBorder", { area, edge })) },
  RangeBorder: {
    id: ({ edge }) => edge,
    properties: {
      color: { get: drawn, set: (border, color, document) => { draw(border, String(color), document); } },
      style: {
        get: (border, document) => (drawn(border, document) === "" ? "None" : "Continuous"),
        set: (border, style, document) => { draw(border, style === "None" ? "" : ink, document); },
      },
      weight: fixed("Thin"),
    },
  },
} satisfies Partial<Kinds>;
