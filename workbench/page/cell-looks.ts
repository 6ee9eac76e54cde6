import { BooleanNumber, BorderStyleTypes, BorderType, HorizontalAlign, VerticalAlign, WrapStrategy, type IStyleData, type Nullable } from "@univerjs/core";
import { SetStyleCommand } from "@univerjs/sheets";
import type { FRange } from "@univerjs/sheets/facade";
import type { CellLook, OpenLook } from "../host/excel/sheet-store";
import { hostWord } from "../host/excel/words";
import type { SheetChange } from "./sheet-change";

const horizontal: Readonly<Record<string, HorizontalAlign>> = { Left: HorizontalAlign.LEFT, Center: HorizontalAlign.CENTER, Right: HorizontalAlign.RIGHT };
const vertical: Readonly<Record<string, VerticalAlign>> = { Top: VerticalAlign.TOP, Center: VerticalAlign.MIDDLE, Bottom: VerticalAlign.BOTTOM };
/** By the host's name of an edge: a side of each cell, and a line of a range. */
const sides = { EdgeTop: "t", EdgeBottom: "b", EdgeLeft: "l", EdgeRight: "r" } as const;
const lines: Readonly<Record<string, BorderType>> = {
  EdgeTop: BorderType.TOP,
  EdgeBottom: BorderType.BOTTOM,
  EdgeLeft: BorderType.LEFT,
  EdgeRight: BorderType.RIGHT,
  InsideHorizontal: BorderType.HORIZONTAL,
  InsideVertical: BorderType.VERTICAL,
};

/** How the grid component keeps one thing of a look, and how it is read there again. */
interface Kept<Value> {
  readonly as: (value: Value) => IStyleData;
  readonly in: (style: IStyleData) => Nullable<Value>;
}

const switched = (key: "bl" | "it"): Kept<boolean> => ({
  as: (isOn) => ({ [key]: isOn ? BooleanNumber.TRUE : BooleanNumber.FALSE }),
  in: (style) => (style[key] === BooleanNumber.TRUE ? true : undefined),
});

const word = (key: "ht" | "vt", words: Readonly<Record<string, number>>): Kept<string> => ({
  as: (given) => (words[given] === undefined ? {} : { [key]: words[given] }),
  in: (style) => hostWord(words, style[key]),
});

const kept: { readonly [Key in keyof CellLook]-?: Kept<NonNullable<CellLook[Key]>> } = {
  fill: { as: (rgb) => ({ bg: rgb === "" ? null : { rgb } }), in: ({ bg }) => bg?.rgb },
  color: { as: (rgb) => ({ cl: { rgb } }), in: ({ cl }) => cl?.rgb },
  bold: switched("bl"),
  italic: switched("it"),
  fontName: { as: (ff) => ({ ff }), in: ({ ff }) => ff },
  fontSize: { as: (fs) => ({ fs }), in: ({ fs }) => fs },
  wrap: { as: (wraps) => ({ tb: wraps ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW }), in: ({ tb }) => (tb === WrapStrategy.WRAP ? true : undefined) },
  horizontal: word("ht", horizontal),
  vertical: word("vt", vertical),
  borders: {
    as: (borders) => {
      const drawn = Object.entries(sides).filter(([edge]) => Boolean(borders[edge]));
      const bd = Object.fromEntries(drawn.map(([edge, side]) => [side, { s: BorderStyleTypes.THIN, cl: { rgb: borders[edge] } }]));
      return drawn.length === 0 ? {} : { bd };
    },
    in: ({ bd }) => {
      const drawn = Object.entries(sides).flatMap(([edge, side]) => (typeof bd?.[side]?.cl.rgb === "string" ? [[edge, bd[side].cl.rgb]] : []));
      return drawn.length === 0 ? undefined : (Object.fromEntries(drawn) as Record<string, string>);
    },
  },
};
const keys = Object.keys(kept) as (keyof CellLook)[];

/** A look as the grid component keeps it. */
export function styleOf(look: OpenLook): IStyleData {
  const given = keys.filter((key) => look[key] !== undefined);
  return given.reduce<IStyleData>((style, key) => ({ ...style, ...(kept[key] as Kept<unknown>).as(look[key]) }), {});
}

/** How a cell looks, in the host's words. */
export function lookOf(style: Nullable<IStyleData>): CellLook {
  const found = keys.map((key) => [key, kept[key].in(style ?? {})] as const);
  return Object.fromEntries(found.filter(([, value]) => value !== undefined && value !== null));
}

/** Gives cells a look; what it leaves out stays as it is. */
export function giveLook({ run }: SheetChange, range: FRange, look: CellLook | undefined): void {
  if (look === undefined) {
    range.clearFormat();
    return;
  }
  const { borders = {}, ...inside } = look;
  for (const [type, value] of Object.entries({ ...styleOf(inside) })) run(SetStyleCommand.id, { range: range.getRange(), style: { type, value } });
  for (const [edge, color] of Object.entries(borders)) {
    const line = lines[edge];
    if (line !== undefined) range.setBorder(line, color === "" ? BorderStyleTypes.NONE : BorderStyleTypes.THIN, color === "" ? undefined : color);
  }
}
