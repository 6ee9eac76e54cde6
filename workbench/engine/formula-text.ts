/** `[EC]`, `[[#This Row],[EC]]`: in column names an apostrophe takes the next character's meaning away. */
export const brackets = String.raw`\[(?:'.|[^'\[\]]|\[(?:'.|[^'\[\]])*\])*\]`;
/** `Log!` or `'Bench 1'!` */
export const sheetPrefix = String.raw`(?:'(?:[^']|'')*'|[\p{L}\p{N}_.]+)!`;

const pieces = new RegExp(String.raw`"(?:[^"]|"")*"|(?:${brackets}|${sheetPrefix}|[^"])+`, "gu");

/** Applies `change` to the parts of a formula that are not text in quotes. */
export function outsideText(formula: string, change: (code: string) => string): string {
  return formula.replace(pieces, (piece) => (piece.startsWith('"') ? piece : change(piece)));
}

/** A formula as a file stores it, as a person would type it: `_xldudf_RUNOFF_PPM(_xlfn.ANCHORARRAY(B2))` is `RUNOFF.PPM(B2#)`. */
export function asTyped(stored: string): string {
  return outsideText(stored, (code) =>
    code
      .replace(/_xldudf_([A-Z]+)_(?=[A-Z])/giu, "$1.")
      .replace(/_xlfn\.ANCHORARRAY\(([^()]+)\)/giu, "$1#")
      .replace(/_xl(?:fn|ws|pm)\./giu, ""),
  );
}

export function quotedSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'!`;
}

/** The sheet that a prefix names, its own where it names none. */
export function sheetIn(prefix: string | undefined, own: string): string {
  return prefix === undefined ? own : prefix.slice(0, -1).replaceAll(/^'|'$/gu, "").replaceAll("''", "'");
}
