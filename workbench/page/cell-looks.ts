import { BooleanNumber, BorderStyleTypes, BorderType, HorizontalAlign, VerticalAlign, WrapStrategy, type IStyleData, type Nullable } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Area } from "../host/excel/area";
import type { CellLook } from "../host/excel/sheet-store";

const horizontal: Readonly<Record<string, HorizontalAlign>> = { Left: HorizontalAlign.LEFT, Center: HorizontalAlign.CENTER, Right: HorizontalAlign.RIGHT };
const vertical: Readonly<Record<string, VerticalAlign>> = { Top: VerticalAlign.TOP, Center: VerticalAlign.MIDDLE, Bottom: VerticalAlign.BOTTOM };
const sides = { EdgeTop: "t", EdgeBottom: "b", EdgeLeft: "l", EdgeRight: "r" } as const;
const lines: Readonly<Record<string, BorderType>> = {
  EdgeTop: BorderType.TOP,
  EdgeBottom: BorderType.BOTTOM,
  EdgeLeft: BorderType.LEFT,
  EdgeRight: BorderType.RIGHT,
  InsideHorizontal: BorderType.HORIZONTAL,
  InsideVertical: BorderType.VERTICAL,
};

const yesNo = (value: boolean): BooleanNumber => (value ? BooleanNumber.TRUE : BooleanNumber.FALSE);

function wordFor<Value>(words: Readonly<Record<string, Value>>, value: Nullable<Value>): string | undefined {
  return Object.keys(words).find((word) => words[word] === value);
}

/** A look as the grid component keeps it. */
export function styleOf(look: CellLook): IStyleData {
  const { fill, color, bold, italic, fontName, fontSize, wrap, borders = {} } = look;
  const [ht, vt] = [horizontal[look.horizontal ?? ""], vertical[look.vertical ?? ""]];
  const drawn = Object.entries(sides).flatMap(([edge, side]) => {
    const rgb = borders[edge];
    return rgb === undefined || rgb === "" ? [] : [[side, { s: BorderStyleTypes.THIN, cl: { rgb } }]];
  });
  return {
    ...(fill === undefined || fill === "" ? {} : { bg: { rgb: fill } }),
    ...(color === undefined ? {} : { cl: { rgb: color } }),
    ...(bold === undefined ? {} : { bl: yesNo(bold) }),
    ...(italic === undefined ? {} : { it: yesNo(italic) }),
    ...(fontName === undefined ? {} : { ff: fontName }),
    ...(fontSize === undefined ? {} : { fs: fontSize }),
    ...(wrap === undefined ? {} : { tb: wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW }),
    ...(ht === undefined ? {} : { ht }),
    ...(vt === undefined ? {} : { vt }),
    ...(drawn.length === 0 ? {} : { bd: Object.fromEntries(drawn) as NonNullable<IStyleData["bd"]> }),
  };
}

/** How a cell looks, in the host's words. */
export function lookOf(given: Nullable<IStyleData>): CellLook {
  const style = given ?? {};
  const [fill, color, across, upright] = [style.bg?.rgb, style.cl?.rgb, wordFor(horizontal, style.ht), wordFor(vertical, style.vt)];
  const borders = Object.entries(sides).flatMap(([edge, side]) => {
    const rgb = style.bd?.[side]?.cl.rgb;
    return typeof rgb === "string" ? [[edge, rgb]] : [];
  });
  return {
    ...(typeof fill === "string" ? { fill } : {}),
    ...(typeof color === "string" ? { color } : {}),
    ...(style.bl === BooleanNumber.TRUE ? { bold: true } : {}),
    ...(style.it === BooleanNumber.TRUE ? { italic: true } : {}),
    ...(typeof style.ff === "string" ? { fontName: style.ff } : {}),
    ...(typeof style.fs === "number" ? { fontSize: style.fs } : {}),
    ...(style.tb === WrapStrategy.WRAP ? { wrap: true } : {}),
    ...(across === undefined ? {} : { horizontal: across }),
    ...(upright === undefined ? {} : { vertical: upright }),
    ...(borders.length === 0 ? {} : { borders: Object.fromEntries(borders) as Record<string, string> }),
  };
}

/** Gives cells a look; what it leaves out stays as it is. */
export function giveLook(sheet: FWorksheet, area: Area, look: CellLook | undefined): void {
  const range = sheet.getRange(area.row, area.column, area.rowCount, area.columnCount);
  if (look === undefined) {
    range.clearFormat();
    return;
  }
  if (look.fill === "") range.setBackgroundColor("");
  else if (look.fill !== undefined) range.setBackgroundColor(look.fill);
  if (look.color !== undefined) range.setFontColor(look.color);
  if (look.bold !== undefined) range.setFontWeight(look.bold ? "bold" : "normal");
  if (look.italic !== undefined) range.setFontStyle(look.italic ? "italic" : "normal");
  if (look.fontName !== undefined) range.setFontFamily(look.fontName);
  if (look.fontSize !== undefined) range.setFontSize(look.fontSize);
  if (look.wrap !== undefined) range.setWrap(look.wrap);
  if (look.horizontal === "Left" || look.horizontal === "Center") range.setHorizontalAlignment(look.horizontal === "Left" ? "left" : "center");
  if (look.horizontal === "Right") range.setHorizontalAlignment("normal");
  if (look.vertical === "Top" || look.vertical === "Bottom") range.setVerticalAlignment(look.vertical === "Top" ? "top" : "bottom");
  if (look.vertical === "Center") range.setVerticalAlignment("middle");
  for (const [edge, color] of Object.entries(look.borders ?? {})) {
    const line = lines[edge];
    if (line !== undefined) range.setBorder(line, color === "" ? BorderStyleTypes.NONE : BorderStyleTypes.THIN, color === "" ? undefined : color);
  }
}
