import type { Area } from "../excel/area";
import { bounding } from "../excel/area-maths";
import type { ChartRecord, ShapeRecord } from "../excel/book-records";
import { HostError } from "../excel/host-error";
import { assertWritable } from "../excel/sheet-access";
import { areaGiven } from "./areas-given";
import { field, fixed, type HostDocument, type HostObject, type Kinds, object, type Property, settable } from "./kind";
import { pictureSize } from "./picture-size";

/** A field of a picture or chart that can be set, unless the person has protected its sheet. */
function guarded<Drawn extends ShapeRecord | ChartRecord>(name: keyof Drawn & string): Property<Drawn> {
  const { get, set } = settable<Drawn>(name);
  return {
    get,
    set: (record, value, document) => {
      assertWritable(document, record.sheetId);
      set(record, value, document);
    },
  };
}

const fields = <Drawn extends ShapeRecord | ChartRecord>(...names: readonly (keyof Drawn & string)[]): Record<string, Property<Drawn>> =>
  Object.fromEntries(names.map((name) => [name, guarded<Drawn>(name)]));

function remove<Drawn extends ShapeRecord | ChartRecord>(list: Drawn[], record: Drawn, document: HostDocument): void {
  assertWritable(document, record.sheetId);
  document.records.remove(list, (each) => each === record);
}

const pixelsPerPoint = 96 / 72;

/** A picture from the base64 text of a PNG or JPEG, in its own size. */
function addImage(sheetId: string, document: HostDocument, base64: unknown): HostObject {
  assertWritable(document, sheetId);
  const size = pictureSize(String(base64));
  if (size === undefined) throw new HostError("InvalidArgument", "no PNG and no JPEG in base64");
  const { records } = document;
  return object("Shape", records.add(records.shapes, {
    id: records.newId("shape"), sheetId, content: String(base64), name: `Picture ${records.shapes.length + 1}`,
    altTextTitle: "", altTextDescription: "", left: 0, top: 0, visible: true,
    width: size.width / pixelsPerPoint, height: size.height / pixelsPerPoint,
  }));
}

function addChart(sheetId: string, document: HostDocument, type: unknown, source: unknown): HostObject {
  assertWritable(document, sheetId);
  const { records } = document;
  return object("Chart", records.add(records.charts, {
    id: records.newId("chart"), sheetId, type: String(type), source: areaGiven(document, source, sheetId),
    name: `Chart ${records.charts.length + 1}`, title: "", left: 0, top: 0, width: 360, height: 216,
  }));
}

function lieOver(record: ChartRecord, document: HostDocument, start: unknown, end: unknown): void {
  assertWritable(document, record.sheetId);
  const area = (given: unknown): Area => areaGiven(document, given, record.sheetId);
  Object.assign(record, document.store.box(end === null || end === undefined ? area(start) : bounding(area(start), area(end))));
  document.records.onChange();
}

export const drawingKinds = {
  /** The pictures of a sheet. */
  ShapeCollection: {
    items: (id, { records }) => records.shapes.filter(({ sheetId }) => sheetId === id).map((each) => object("Shape", each)),
    acts: { addImage },
  },
  Shape: {
    alsoCalled: ({ name }) => name,
    properties: {
      id: field("id"),
      type: fixed("Image"),
      ...fields<ShapeRecord>("name", "altTextTitle", "altTextDescription", "left", "top", "width", "height", "visible"),
      lockAspectRatio: fixed(true),
    },
    acts: { delete: (record, document) => { remove(document.records.shapes, record, document); } },
  },
  ChartCollection: {
    items: (id, { records }) => records.charts.filter(({ sheetId }) => sheetId === id).map((each) => object("Chart", each)),
    acts: { add: addChart },
  },
  /** A chart of the host: what it shows and where; nothing is drawn. */
  Chart: {
    alsoCalled: ({ name }) => name,
    properties: {
      id: field("id"),
      ...fields<ChartRecord>("name", "left", "top", "width", "height"),
    },
    parts: { title: (record) => object("ChartTitle", record) },
    acts: {
      setPosition: lieOver,
      delete: (record, document) => { remove(document.records.charts, record, document); },
    },
  },
  ChartTitle: { properties: { text: guarded<ChartRecord>("title"), visible: fixed(true) } },
} satisfies Partial<Kinds>;
