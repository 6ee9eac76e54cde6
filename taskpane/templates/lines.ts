import { type Accepts, type Line, type TemplateCell } from "./sheet-template";

/** The rows that every sheet of ours is made of: what to type on the left, in a box, and how to read it beside. */
export const title = (text: string): Line => ({ cells: [{ value: text, style: "title" }] });
export const heading = (...texts: string[]): Line => ({ cells: texts.map((value) => ({ value, style: "heading" })) });
export const note = (text: string): Line => ({ cells: [{ value: text, style: "note" }] });
export const caution = (text: string): Line => ({ cells: [{ value: text, style: "caution" }] });
export const gap: Line = { cells: [] };

interface Box {
  readonly value?: string | number | undefined;
  readonly accepts: Accepts;
  readonly numberFormat?: string;
}

/** What a box for an EC accepts and how it is shown. */
export const ecBox = (
  hint: string,
  between: readonly [number, number] = [0.01, 20],
): Pick<Box, "accepts" | "numberFormat"> => ({ accepts: { between, hint }, numberFormat: "0.00" });

/** A box for a number in a table: what it accepts, and how it is shown. */
export const numberBox = (hint: string, between: readonly [number, number], numberFormat: string): TemplateCell => ({
  style: "input", numberFormat, accepts: { between, hint },
});

/** A box to type in; what it accepts is said beside it as well. */
export function input(key: string, label: string, { value, ...box }: Box): Line {
  const cell: TemplateCell = { ...box, ...(value === undefined ? {} : { value }), style: "input" };
  return { key, cells: [{ value: label, style: "label" }, cell, { value: box.accepts.hint, style: "note" }] };
}

interface Answer {
  readonly formula: string;
  readonly numberFormat?: string;
  /** Left out where the formula gives its own reason in the next cell. */
  readonly how?: string;
}

/** An answer that follows from the boxes. */
export function result(key: string, label: string, { how, ...answer }: Answer): Line {
  const beside: TemplateCell = { ...(how === undefined ? {} : { value: how }), style: "note" };
  return { key, cells: [{ value: label, style: "label" }, { ...answer, style: "result" }, beside] };
}
