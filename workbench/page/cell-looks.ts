import { BooleanNumber, HorizontalAlign, VerticalAlign, WrapStrategy, type IStyleData, type Nullable } from "@univerjs/core";
import type { FRange, FWorksheet } from "@univerjs/sheets/facade";
import type { Area } from "../host/excel/area";
import type { CellLook } from "../host/excel/sheet-store";

const horizontal: Readonly<Record<string, HorizontalAlign>> = { Left: HorizontalAlign.LEFT, Center: HorizontalAlign.CENTER, Right: HorizontalAlign.RIGHT };
const vertical: Readonly<Record<string, VerticalAlign>> = { Top: VerticalAlign.TOP, Center: VerticalAlign.MIDDLE, Bottom: VerticalAlign.BOTTOM };

function wordFor<Value>(words: Readonly<Record<string, Value>>, value: Value): string | undefined {
  return Object.keys(words).find((word) => words[word] === value);
}

/** How a cell looks, in the host's words. */
export function lookOf(given: Nullable<IStyleData>): CellLook {
  const style = given ?? undefined;
  const fill = style?.bg?.rgb;
  const color = style?.cl?.rgb;
  const across = style?.ht === undefined || style.ht === null ? undefined : wordFor(horizontal, style.ht);
  const upright = style?.vt === undefined || style.vt === null ? undefined : wordFor(vertical, style.vt);
  return {
    ...(typeof fill === "string" ? { fill } : {}),
    ...(typeof color === "string" ? { color } : {}),
    ...(style?.bl === BooleanNumber.TRUE ? { bold: true } : {}),
    ...(style?.it === BooleanNumber.TRUE ? { italic: true } : {}),
    ...(typeof style?.ff === "string" ? { fontName: style.ff } : {}),
    ...(typeof style?.fs === "number" ? { fontSize: style.fs } : {}),
    ...(style?.tb === WrapStrategy.WRAP ? { wrap: true } : {}),
    ...(across === undefined ? {} : { horizontal: across }),
    ...(upright === undefined ? {} : { vertical: upright }),
  };
}

/** Gives cells a look; what it leaves out stays as it is. */
export function giveLook(sheet: FWorksheet, area: Area, look: CellLook | undefined): void {
  const range: FRange = sheet.getRange(area.row, area.column, area.rowCount, area.columnCount);
  if (look === undefined) {
    range.clearFormat();
    return;
  }
  if (look.fill !== undefined) range.setBackgroundColor(look.fill);
  if (look.color !== undefined) range.setFontColor(look.color);
  if (look.bold !== undefined) range.setFontWeight(look.bold ? "bold" : "normal");
  if (look.italic !== undefined) range.setFontStyle(look.italic ? "italic" : "normal");
  if (look.fontName !== undefined) range.setFontFamily(look.fontName);
  if (look.fontSize !== undefined) range.setFontSize(look.fontSize);
  if (look.wrap !== undefined) range.setWrap(look.wrap);
  if (look.horizontal === "Left" || look.horizontal === "Center") range.setHorizontalAlignment(look.horizontal === "Left" ? "left" : "center");
  if (look.horizontal === "Right") range.setHorizontalAlignment("normal");
}
