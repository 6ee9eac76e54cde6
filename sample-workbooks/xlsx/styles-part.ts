import { borders, fills, fonts, lookNames, looks, numberFormats, type Style, styleOf, type StyleName } from "./style-table";
import { counted, document, element, vocabularies } from "./xml";

/** The number under which a conditional format refers to its look. */
export const lookNumber = (look: keyof typeof looks): number => lookNames.indexOf(look);

/** The looks that the cells of a workbook have, each stored once and named by its number; the first is the plain one. */
export class CellStyles {
  private readonly styles = new Map<string, Style>();

  constructor() {
    this.numberOf("plain");
  }

  /** The number of a look, new or known. */
  numberOf(named: StyleName | Style): number {
    const style = styleOf(named);
    const key = JSON.stringify(style);
    if (!this.styles.has(key)) this.styles.set(key, style);
    return [...this.styles.keys()].indexOf(key);
  }

  part(): string {
    return stylesPart([...this.styles.values()]);
  }
}

/** styles.xml: the looks in use, with the whole tables of fonts, fills, borders and conditional formats. */
function stylesPart(styles: readonly Style[]): string {
  const own = Object.values(numberFormats).filter(({ code }) => code !== undefined);
  const normal = { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 };
  return document(
    element(
      "styleSheet",
      { xmlns: vocabularies.sheet },
      counted("numFmts", own.map(({ id, code }) => element("numFmt", { numFmtId: id, formatCode: code }))),
      counted("fonts", Object.values(fonts).map(font)),
      counted("fills", Object.values(fills).map(fill)),
      counted("borders", Object.values(borders).map(border)),
      counted("cellStyleXfs", [element("xf", normal)]),
      counted("cellXfs", styles.map(cellFormat)),
      counted("cellStyles", [element("cellStyle", { name: "Normal", xfId: 0, builtinId: 0 })]),
      counted("dxfs", lookNames.map(look)),
      element("tableStyles", { count: 0, defaultTableStyle: "TableStyleMedium2", defaultPivotStyle: "PivotStyleLight16" }),
    ),
  );
}

function font({ size, bold, colour }: { size: number; bold?: boolean; colour?: string }): string {
  const shade = colour === undefined ? element("color", { theme: 1 }) : element("color", { rgb: colour });
  return element("font", {}, bold === true ? element("b") : "", element("sz", { val: size }), shade, element("name", { val: "Calibri" }), element("family", { val: 2 }));
}

function fill(colour: string | undefined, position: number): string {
  if (colour === undefined) return element("fill", {}, element("patternFill", { patternType: position === 0 ? "none" : "gray125" }));
  const shades = [element("fgColor", { rgb: colour }), element("bgColor", { indexed: 64 })];
  return element("fill", {}, element("patternFill", { patternType: "solid" }, ...shades));
}

type Sides = Readonly<Partial<Record<"left" | "right" | "top" | "bottom", readonly [line: string, colour: string]>>>;

function border(sides: Sides): string {
  const side = (name: keyof Sides): string => {
    const [line, colour] = sides[name] ?? [];
    return colour === undefined ? element(name) : element(name, { style: line }, element("color", { rgb: colour }));
  };
  return element("border", {}, side("left"), side("right"), side("top"), side("bottom"), element("diagonal"));
}

const position = (table: object, key: string): number => Object.keys(table).indexOf(key);

function cellFormat(style: Style): string {
  const alignment = element("alignment", { horizontal: style.align, vertical: "center", wrapText: style.wrap, indent: style.indent });
  const attributes = {
    numFmtId: numberFormats[style.format ?? "general"].id,
    fontId: position(fonts, style.font ?? "plain"),
    fillId: position(fills, style.fill ?? "none"),
    borderId: position(borders, style.border ?? "none"),
    xfId: 0,
    applyNumberFormat: style.format === undefined ? undefined : true,
    applyFont: style.font === undefined ? undefined : true,
    applyFill: style.fill === undefined ? undefined : true,
    applyBorder: style.border === undefined ? undefined : true,
    applyAlignment: true,
  };
  return element("xf", attributes, alignment);
}

function look(name: keyof typeof looks): string {
  const { bold, italic, colour, fill: back, border: line } = looks[name];
  const side = (at: string): string => element(at, { style: line }, element("color", { rgb: colour }));
  return element(
    "dxf",
    {},
    element("font", {}, element("b", { val: bold }), element("i", { val: italic }), element("color", { rgb: colour })),
    element("fill", {}, element("patternFill", { patternType: "solid" }, element("fgColor", { rgb: back }), element("bgColor", { rgb: back }))),
    element("border", {}, side("left"), side("right"), side("top"), side("bottom")),
  );
}
