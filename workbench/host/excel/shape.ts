import { removeRecord, type ShapeRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { Collection } from "./collection";
import { HostError } from "./host-error";
import type { Range } from "./range";
import type { RequestContext } from "./request-context";
import { assertWritable } from "./sheet-access";

type Written = "name" | "altTextTitle" | "altTextDescription" | "left" | "top" | "width" | "height" | "visible";

function written(name: Written): Properties<ShapeRecord, Shape>[string] {
  return {
    get: (record) => record[name],
    set: (record, value, { context }) => {
      assertWritable(context, record.sheetId);
      if (typeof value !== typeof record[name] || Number.isNaN(value)) throw new HostError("InvalidArgument", `${name} of a shape`);
      Object.assign(record, { [name]: value });
      context.records.onChange();
    },
  };
}

const shapeProperties: Properties<ShapeRecord, Shape> = {
  id: { get: ({ id }) => id },
  type: { get: () => "Image" },
  name: written("name"),
  altTextTitle: written("altTextTitle"),
  altTextDescription: written("altTextDescription"),
  left: written("left"),
  top: written("top"),
  width: written("width"),
  height: written("height"),
  visible: written("visible"),
  lockAspectRatio: { get: () => true, set: () => undefined },
  placement: { get: () => "TwoCell", set: () => undefined },
};

/** A picture on the sheet. */
export class Shape extends ClientObject<ShapeRecord> {
  protected override readonly properties = shapeProperties;

  delete(): void {
    this.write(() => {
      assertWritable(this.context, this.target.sheetId);
      removeRecord(this.context.records.shapes, this.target);
      this.context.records.onChange();
    });
  }

  /** Puts the picture's corner on the corner of a cell. */
  setPosition(cell: Range): void {
    this.write(() => {
      Object.assign(this.target, this.context.store.box(cell.target), { width: this.target.width, height: this.target.height });
      this.context.records.onChange();
    });
  }
}

declareProperties(Shape, shapeProperties);

/** The pictures of a sheet. */
export class ShapeCollection extends Collection<Shape, ShapeRecord> {
  constructor(context: RequestContext, private readonly sheetId: () => string) {
    super(context, () => true);
  }

  /** A picture from SVG text. @throws {HostError} `InvalidArgument` when the text is no SVG */
  addSvg(xml: string): Shape {
    const numbers = ["width", "height"].map((name) => Number(new RegExp(`<svg[^>]*\\s${name}="([\\d.]+)`).exec(xml)?.[1] ?? 100));
    return this.add("svg", xml, /<svg[\s>]/.test(xml), numbers);
  }

  /** A picture from the base64 text of a PNG or JPEG. */
  addImage(base64: string): Shape {
    return this.add("image", base64, /^[A-Za-z0-9+/]+={0,2}$/.test(base64), [100, 100]);
  }

  getItem(nameOrId: string): Shape {
    return new Shape(this.context, () => this.called(nameOrId));
  }

  getItemOrNullObject(nameOrId: string): Shape {
    return new Shape(this.context, () => this.called(nameOrId), true);
  }

  protected override keys(): readonly ShapeRecord[] {
    return this.context.records.shapes.filter(({ sheetId }) => sheetId === this.sheetId());
  }

  protected override itemFor(record: ShapeRecord): Shape {
    return new Shape(this.context, () => record);
  }

  private called(nameOrId: string): ShapeRecord | undefined {
    return this.keys().find(({ id, name }) => id === nameOrId || name === nameOrId);
  }

  private add(kind: ShapeRecord["kind"], content: string, valid: boolean, [width = 100, height = 100]: readonly number[]): Shape {
    let made: ShapeRecord | undefined;
    this.write(() => {
      const sheetId = this.sheetId();
      assertWritable(this.context, sheetId);
      if (!valid) throw new HostError("InvalidArgument", `no ${kind}`);
      const { records } = this.context;
      const id = records.newId("shape");
      made = { id, sheetId, kind, content, name: `Picture ${records.shapes.length + 1}`, altTextTitle: "", altTextDescription: "", left: 0, top: 0, width, height, visible: true };
      records.shapes.push(made);
      records.onChange();
    });
    return new Shape(this.context, () => made);
  }
}
