export interface Style {
  readonly format?: keyof typeof numberFormats;
  readonly font?: keyof typeof fonts;
  readonly fill?: keyof typeof fills;
  readonly border?: keyof typeof borders;
  readonly align?: "left" | "center" | "right";
  readonly wrap?: boolean;
  /** Keeps text off the number at its left. */
  readonly indent?: 1;
}

/** Number formats with the id under which the file knows them; from 164 on they are the file's own. */
export const numberFormats = {
  general: { id: 0, code: undefined },
  whole: { id: 1, code: undefined },
  hundredths: { id: 2, code: undefined },
  date: { id: 164, code: "yyyy\\-mm\\-dd" },
  dayFirst: { id: 165, code: "dd/mm/yyyy" },
  tenths: { id: 166, code: "0.0" },
  signedTenths: { id: 167, code: "+0.0;\\-0.0;0.0" },
  percent: { id: 168, code: "0%" },
  thousandths: { id: 169, code: "0.000" },
  clock: { id: 170, code: "h:mm" },
  dateAndClock: { id: 171, code: "yyyy\\-mm\\-dd\\ hh:mm" },
  timeOfDay: { id: 172, code: "hh:mm" },
  dayNumber: { id: 173, code: '"day "0' },
} as const;

export const fonts = {
  plain: { size: 11 },
  bold: { size: 11, bold: true },
  title: { size: 16, bold: true, colour: "FF24483E" },
  quiet: { size: 10, colour: "FF5B6660" },
  heading: { size: 11, bold: true, colour: "FF24483E" },
  caution: { size: 10, bold: true, colour: "FF7A2E12" },
  large: { size: 18, bold: true },
  largeLabel: { size: 13 },
  largeText: { size: 15, bold: true },
} as const;

/** The first two are the file format's own and may not change. */
export const fills = { none: undefined, dotted: undefined, heading: "FFE3ECE4", computed: "FFF4F7F3", setting: "FFFFF8E1" } as const;

export const borders = {
  none: {},
  heading: { bottom: ["medium", "FF5E8A78"] },
  box: { left: ["thin", "FFB9A25C"], right: ["thin", "FFB9A25C"], top: ["thin", "FFB9A25C"], bottom: ["thin", "FFB9A25C"] },
  line: { bottom: ["thin", "FFD5DDD6"] },
} as const;

/** Every look a cell of the samples can have. What the grower types is plain or boxed, what is computed is shaded. */
export const styles = {
  plain: {},
  title: { font: "title" },
  quiet: { font: "quiet" },
  note: { align: "left", indent: 1 },
  wrapped: { wrap: true, border: "line", align: "left", indent: 1 },
  heading: { font: "heading", fill: "heading", border: "heading", align: "center", wrap: true },
  headingLeft: { font: "heading", fill: "heading", border: "heading", align: "left", wrap: true, indent: 1 },
  label: { border: "line", wrap: true, align: "left", indent: 1 },
  setting: { fill: "setting", border: "box", align: "left", indent: 1 },
  date: { format: "date", align: "center" },
  dayFirst: { format: "dayFirst", align: "center" },
  clock: { format: "clock" },
  centred: { align: "center" },
  ec: { format: "hundredths" },
  ph: { format: "tenths" },
  litres: { format: "hundredths" },
  celsius: { format: "tenths" },
  ratio: { format: "hundredths", fill: "computed", align: "right" },
  shift: { format: "signedTenths", fill: "computed" },
  share: { format: "percent", fill: "computed" },
  words: { fill: "computed", align: "left", indent: 1 },
  answer: { fill: "computed", border: "line", font: "bold", align: "left", indent: 1, wrap: true },
  answerDate: { fill: "computed", border: "line", font: "bold", align: "left", indent: 1, format: "date" },
  answerThousandths: { fill: "computed", border: "line", font: "bold", align: "left", indent: 1, format: "thousandths" },
  answerShare: { fill: "computed", border: "line", font: "bold", align: "left", indent: 1, format: "percent" },
  answerHundredths: { fill: "computed", border: "line", font: "bold", align: "left", indent: 1, format: "hundredths" },
  reason: { fill: "computed", border: "line", align: "left", indent: 1, wrap: true },
} as const satisfies Readonly<Record<string, Style>>;

export type StyleName = keyof typeof styles;
export const styleOf = (style: StyleName | Style): Style => (typeof style === "string" ? styles[style] : style);

/** The looks of a conditional format: each is told apart without colour, by weight, slant and border. */
export const looks = {
  marked: { bold: true, italic: false, colour: "FF7A2E12", fill: "FFFBE6DC", border: "thin" },
  questioned: { bold: false, italic: true, colour: "FF4A4A68", fill: "FFECECF4", border: "dashed" },
} as const;
export const lookNames = Object.keys(looks) as (keyof typeof looks)[];
