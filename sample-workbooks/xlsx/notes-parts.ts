import { inReadingOrder, type Place, placeOf } from "./address";
import { type SheetSpec } from "./spec";
import { document, element, escaped, vocabularies } from "./xml";

/** A note on a cell. */
export interface Note {
  readonly at: string;
  readonly place: Place;
  readonly text: string;
}

/** The notes of a sheet, in reading order. */
export const notesOf = ({ cells }: SheetSpec): Note[] =>
  [...cells]
    .flatMap(([at, { note: text }]) => (text === undefined ? [] : [{ at, place: placeOf(at), text }]))
    .sort((a, b) => inReadingOrder(a.place, b.place));

/** comments.xml: what the notes say. */
export function commentsPart(notes: readonly Note[]): string {
  const comments = notes.map(({ at, text }) => {
    const run = element("r", {}, element("t", { "xml:space": "preserve" }, escaped(text)));
    return element("comment", { ref: at, authorId: 0 }, element("text", {}, run));
  });
  const authors = element("authors", {}, element("author", {}, "Runoff Ledger"));
  return document(element("comments", { xmlns: vocabularies.sheet }, authors, element("commentList", {}, ...comments)));
}

/** Shape type 202 is the vocabulary's text box. */
const textBox = "_x0000_t202";

/** vmlDrawing: the hidden boxes in which the host shows notes; it shows no note without one. */
export function noteBoxesPart(notes: readonly Note[]): string {
  const outline = element("v:path", { gradientshapeok: "t", "o:connecttype": "rect" });
  const box = element("v:shapetype", { id: textBox, coordsize: "21600,21600", "o:spt": 202, path: "m,l,21600r21600,l21600,xe" }, element("v:stroke", { joinstyle: "miter" }), outline);
  const layout = element("o:shapelayout", { "v:ext": "edit" }, element("o:idmap", { "v:ext": "edit", data: 1 }));
  const names = { "xmlns:v": "urn:schemas-microsoft-com:vml", "xmlns:o": "urn:schemas-microsoft-com:office:office", "xmlns:x": "urn:schemas-microsoft-com:office:excel" };
  return element("xml", names, layout, box, ...notes.map(noteBox));
}

function noteBox({ place: { row, column } }: Note, number: number): string {
  const right = column + 1;
  // Left, top, right and bottom edge: each a column or row and an offset in it, in pixels.
  const anchor = [right, 12, row, 4, right + 3, 12, row + 3, 4].join(", ");
  const told = element(
    "x:ClientData",
    { ObjectType: "Note" },
    element("x:MoveWithCells"),
    element("x:SizeWithCells"),
    element("x:Anchor", {}, anchor),
    element("x:AutoFill", {}, "False"),
    element("x:Row", {}, String(row)),
    element("x:Column", {}, String(column)),
  );
  const shape = { id: `_x0000_s${1025 + number}`, type: `#${textBox}`, style: "position:absolute;visibility:hidden", fillcolor: "#fff8e1", "o:insetmode": "auto" };
  return element("v:shape", shape, element("v:fill", { color2: "#fff8e1" }), element("v:textbox", { style: "mso-direction-alt:auto" }), told);
}
