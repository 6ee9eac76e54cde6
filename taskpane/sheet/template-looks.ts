import { type TemplateStyle } from "../templates/sheet-template";

/** How a cell of a template looks; boxes to type in have a line around them, so that they are told without colour. */
export interface Look {
  readonly fill?: string;
  readonly color?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly edge?: string;
  readonly wrap?: boolean;
}

export const looks: Readonly<Record<TemplateStyle, Look>> = {
  title: { bold: true, size: 16 },
  heading: { bold: true, fill: "#DCE3DA" },
  label: {},
  input: { fill: "#FFFBEF", edge: "#7A6230" },
  result: { bold: true, fill: "#F0F3EF" },
  note: { italic: true, color: "#4A4F4B" },
  caution: { bold: true, color: "#5A1F12" },
  large: { bold: true, size: 18, fill: "#F0F3EF", edge: "#4A4F4B" },
  largeLabel: { size: 13 },
  largeText: { bold: true, size: 15 },
  wrapped: { color: "#4A4F4B", wrap: true },
};
