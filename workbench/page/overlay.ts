import type { FUniver } from "@univerjs/core/facade";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { areaAt } from "../host/excel/area";
import type { BookRecords, ShapeRecord } from "../host/excel/book-records";
import type { Box, SheetStore } from "../host/excel/sheet-store";
import { chartBox } from "./chart-box";
import { boxOf, pixelsPerPoint } from "./grid-geometry";
import { part } from "./page-parts";
import { promptBox } from "./prompt-box";

/** In points from the cell, and in pixels as in the style sheet. */
const [promptGap, widestPrompt] = [6, 250];

/** Shows what lies over the cells, and moves with them: pictures, places of charts, and the hint of the selected cell. */
export class Overlay {
  private readonly layer = part("pictures", HTMLElement);

  constructor(
    private readonly api: FUniver,
    private readonly records: BookRecords,
    subscribe: SheetStore["subscribe"],
  ) {
    records.onChange = () => { this.draw(); };
    const events = [api.Event.Scroll, api.Event.ActiveSheetChanged, api.Event.SheetZoomChanged] as const;
    for (const event of events) api.addEvent(event, () => { this.draw(); });
    subscribe(({ kind }) => { if (kind === "selection") this.draw(); });
    this.draw();
  }

  private draw(): void {
    const sheet = this.api.getActiveWorkbook()?.getActiveSheet();
    const canvas = document.querySelector("#grid canvas[id^='univer-sheet-main-canvas']");
    const frame = this.layer.parentElement?.getBoundingClientRect();
    if (sheet === undefined || canvas === null || frame === undefined) return;
    // The layer begins where the row and column headers end, so that a picture scrolls away under them.
    const [first, place] = [sheet.getRange(0, 0).getCellRect(), canvas.getBoundingClientRect()];
    this.layer.style.left = `${place.left - frame.left + first.left * sheet.getZoom()}px`;
    this.layer.style.top = `${place.top - frame.top + first.top * sheet.getZoom()}px`;
    this.layer.style.bottom = `${frame.bottom - place.bottom}px`;
    this.layer.replaceChildren(...this.pictures(sheet), ...this.charts(sheet), ...this.prompt(sheet));
  }

  private pictures(sheet: FWorksheet): HTMLElement[] {
    const shapes = this.records.shapes.filter(({ sheetId, visible }) => visible && sheetId === sheet.getSheetId());
    return shapes.map((shape) => placed(picture(shape), shape, sheet));
  }

  private charts(sheet: FWorksheet): HTMLElement[] {
    const nameOf = (id: string): string | undefined => this.api.getActiveWorkbook()?.getSheetBySheetId(id)?.getSheetName();
    const charts = this.records.charts.filter(({ sheetId }) => sheetId === sheet.getSheetId());
    return charts.map((chart) => placed(chartBox(chart, nameOf(chart.source.sheetId)), chart, sheet));
  }

  private prompt(sheet: FWorksheet): HTMLElement[] {
    const cell = sheet.getSelection()?.getActiveRange();
    if (!cell) return [];
    const area = areaAt(sheet.getSheetId(), cell.getRow(), cell.getColumn());
    const box = promptBox(this.records.validations, area);
    if (box === undefined) return [];
    const { left, top, height } = boxOf(sheet, area);
    placed(box, { left: left + promptGap, top: top + height + promptGap }, sheet);
    box.style.left = `min(${box.style.left}, 100% - ${widestPrompt}px)`;
    return [box];
  }
}

type Placed = Pick<Box, "left" | "top"> & Partial<Box>;

function placed(element: HTMLElement, box: Placed, sheet: FWorksheet): HTMLElement {
  const away = scrolledAway(sheet, box);
  const scale = pixelsPerPoint * sheet.getZoom();
  const pixels = (points: number | undefined): string => (points === undefined ? "" : `${points * scale}px`);
  const [left, top] = [pixels(box.left - away.left), pixels(box.top - away.top)];
  Object.assign(element.style, { left, top, width: pixels(box.width), height: pixels(box.height) });
  return element;
}

/** The part of the sheet, in points, that has been scrolled out of sight; what lies wholly on frozen rows or columns stays. */
function scrolledAway(sheet: FWorksheet, box: Placed): Pick<Box, "left" | "top"> {
  const { sheetViewStartRow, sheetViewStartColumn, offsetX, offsetY } = sheet.getScrollState();
  const id = sheet.getSheetId();
  const { left, top } = boxOf(sheet, areaAt(id, sheetViewStartRow, sheetViewStartColumn));
  const frozen = boxOf(sheet, areaAt(id, sheet.getFrozenRows(), sheet.getFrozenColumns()));
  return {
    left: box.left + (box.width ?? 0) <= frozen.left ? 0 : left + offsetX / pixelsPerPoint,
    top: box.top + (box.height ?? 0) <= frozen.top ? 0 : top + offsetY / pixelsPerPoint,
  };
}

function picture(shape: ShapeRecord): HTMLImageElement {
  const image = new Image();
  image.alt = shape.altTextDescription;
  image.src = `data:${shape.content.startsWith("/9j/") ? "image/jpeg" : "image/png"};base64,${shape.content}`;
  return image;
}
