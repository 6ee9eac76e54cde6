import type { BorderSide, CellStyle, Color } from "hucre";
import type { CellLook, OpenLook } from "../host/excel/sheet-store";

const edges = { top: "EdgeTop", bottom: "EdgeBottom", left: "EdgeLeft", right: "EdgeRight" } as const;
const across: Readonly<Record<string, string>> = { left: "Left", center: "Center", right: "Right" };
const upright: Readonly<Record<string, string>> = { top: "Top", center: "Center", bottom: "Bottom" };
const ink = "#000000";

/** A file's style in the host's words. Colours of the file's theme are left to the grid's own. */
export function cellLook({ font, fill, border, alignment }: CellStyle): CellLook {
  const pattern = fill?.type === "pattern" && fill.pattern === "solid" ? (hex(fill.fgColor) ?? hex(fill.bgColor)) : undefined;
  const borders = border === undefined ? {} : drawn(border);
  return given({
    fill: pattern,
    color: hex(font?.color),
    bold: font?.bold,
    italic: font?.italic,
    fontName: font?.name,
    fontSize: font?.size,
    wrap: alignment?.wrapText,
    horizontal: across[alignment?.horizontal ?? ""],
    vertical: upright[alignment?.vertical ?? ""],
    borders: Object.keys(borders).length === 0 ? undefined : borders,
  });
}

function drawn(border: NonNullable<CellStyle["border"]>): Record<string, string> {
  const sides: [string, BorderSide | undefined][] = Object.entries(edges).map(([side, edge]) => [edge, border[side as keyof typeof edges]]);
  return Object.fromEntries(sides.flatMap(([edge, side]) => (side === undefined ? [] : [[edge, hex(side.color) ?? ink]])));
}

function hex(color: Color | undefined): string | undefined {
  return color?.rgb === undefined ? undefined : `#${color.rgb.slice(-6)}`;
}

function given(look: OpenLook): CellLook {
  return Object.fromEntries(Object.entries(look).filter(([, value]) => value !== undefined));
}
