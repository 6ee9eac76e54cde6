import type { FUniver } from "@univerjs/core/facade";
import type { BookRecords, ShapeRecord } from "../host/excel/book-records";
import { pixelsPerPoint } from "./grid-geometry";
import { part } from "./page-parts";

/** Shows the pictures that the add-in has placed on the sheet, over the grid and moving with it. */
export class Pictures {
  private readonly layer = part("pictures", HTMLElement);

  constructor(
    private readonly api: FUniver,
    private readonly records: BookRecords,
  ) {
    records.onChange = () => { this.draw(); };
    const events = [api.Event.Scroll, api.Event.ActiveSheetChanged, api.Event.SheetZoomChanged, api.Event.SheetSkeletonChanged] as const;
    for (const event of events) api.addEvent(event, () => { this.draw(); });
    this.draw();
  }

  private draw(): void {
    const sheet = this.api.getActiveWorkbook()?.getActiveSheet();
    if (sheet === undefined) return;
    const origin = sheet.getRange(0, 0).getCellRect();
    const frame = this.layer.getBoundingClientRect();
    const scale = sheet.getZoom() * pixelsPerPoint;
    const shapes = this.records.shapes.filter(({ sheetId, visible }) => visible && sheetId === sheet.getSheetId());
    this.layer.replaceChildren(...shapes.map((shape) => picture(shape, origin.left - frame.left, origin.top - frame.top, scale)));
  }
}

function picture(shape: ShapeRecord, left: number, top: number, scale: number): HTMLImageElement {
  const image = new Image();
  image.alt = shape.altTextDescription;
  image.src = shape.kind === "svg" ? `data:image/svg+xml,${encodeURIComponent(shape.content)}` : `data:image/png;base64,${shape.content}`;
  Object.assign(image.style, {
    left: `${left + shape.left * scale}px`,
    top: `${top + shape.top * scale}px`,
    width: `${shape.width * scale}px`,
    height: `${shape.height * scale}px`,
  });
  return image;
}
