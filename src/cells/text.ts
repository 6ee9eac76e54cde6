const marks = /[\u0300-\u036f]/g;

/** Lower case, accents off, degree and micro signs made one: the form in which words are compared. */
export function plain(text: string): string {
  return simple.test(text) ? text.toLowerCase() : made(text);
}

/** Words and figures without accents, marks or doubled spaces: nearly every cell of a log. */
const simple = /^(?:[!-~]+(?: [!-~]+)*)?$/;

function made(text: string): string {
  return text
    .replace(/[\u00ba\u02da]/g, "\u00b0")
    .replace(/ß/g, "ss")
    .replace(/[Łł]/g, "l")
    .normalize("NFKC")
    .normalize("NFD")
    .replace(marks, "")
    .replace(/\u03bc/g, "u")
    .replace(/[\u00a0\u2000-\u200b\u202f]/g, " ")
    .replace(/[\u2212\u2013\u2014]/g, "-")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
}

/** Whether a cell holds nothing at all. */
export const isBlank = (cell: unknown): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && (cell === "" || cell.trim() === ""));

/** A cell as a person would quote it in a sentence. */
export function quoted(cell: unknown): string {
  if (typeof cell === "number" || typeof cell === "boolean") return String(cell);
  const text = typeof cell === "string" ? cell.trim() : "this value";
  return text.length > 40 ? `"${text.slice(0, 39)}…"` : `"${text}"`;
}
