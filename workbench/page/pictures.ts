import type { FUniver } from "@univerjs/core/facade";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { areaAt } from "../host/excel/area";
import type { BookRecords, ShapeRecord } from "../host/excel/book-records";
import { boxOf, pixelsPerPoint } from "./grid-geometry";
import { part } from "./page-parts";

/** Shows the pictures that the add-in has placed on the sheet, over the grid and moving with it. */
export class Pictures {
  private readonly layer = part("pictures", HTMLElement);

  constructor(
    private readonly api: FUniver,
    private readonly records: BookRecords,
  ) {
    records.onChange = () => { this.draw(); };
    const events = [api.Event.Scroll, api.Event.ActiveSheetChanged, api.Event.SheetZoomChanged] as const;
    for (const event of events) api.addEvent(event, () => { this.draw(); });
    this.draw();
  }

  private draw(): void {
    const sheet = this.api.getActiveWorkbook()?.getActiveSheet();
    const canvas = document.querySelector("#grid canvas[id^='univer-sheet-main-canvas']");
    const frame = this.layer.parentElement?.getBoundingClientRect();
    if (sheet === undefined || canvas === null || frame === undefined) return;
    // The layer begins where the row and column headers end, so that a picture scrolls away under them.
    const [first, place] = [sheet.getRange(0, 0).getCellRect(), canvas.getBoundingClientRect()];
    const zoom = sheet.getZoom();
    this.layer.style.left = `${place.left - frame.left + first.left * zoom}px`;
    this.layer.style.top = `${place.top - frame.top + first.top * zoom}px`;
    const shapes = this.records.shapes.filter(({ sheetId, visible }) => visible && sheetId === sheet.getSheetId());
    this.layer.replaceChildren(...shapes.map((shape) => picture(shape, scrolledAway(sheet), zoom)));
  }
}

/** The part of the sheet, in points, that has been scrolled out of sight. */
function scrolledAway(sheet: FWorksheet): { readonly left: number; readonly top: number } {
  const { sheetViewStartRow, sheetViewStartColumn, offsetX, offsetY } = sheet.getScrollState();
  const { left, top } = boxOf(sheet, areaAt(sheet.getSheetId(), sheetViewStartRow, sheetViewStartColumn));
  return { left: left + offsetX / pixelsPerPoint, top: top + offsetY / pixelsPerPoint };
}

function picture(shape: ShapeRecord, away: { readonly left: number; readonly top: number }, zoom: number): HTMLImageElement {
  const image = new Image();
  image.alt = shape.altTextDescription;
  image.src = shape.kind === "svg" ? `data:image/svg+xml,${encodeURIComponent(shape.content)}` : `data:image/png;base64,${shape.content}`;
  const scale = pixelsPerPoint * zoom;
  Object.assign(image.style, {
    left: `${(shape.left - away.left) * scale}px`,
    top: `${(shape.top - away.top) * scale}px`,
    width: `${shape.width * scale}px`,
    height: `${shape.height * scale}px`,
  });
  return image;
}
