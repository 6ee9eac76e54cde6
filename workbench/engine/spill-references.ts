import { outsideText, quotedSheet, sheetIn, sheetPrefix } from "./formula-text";

const reference = new RegExp(String.raw`(${sheetPrefix})?\$?([A-Z]{1,3})\$?([1-9]\d*)#(?![\p{L}\p{N}])`, "giu");

export function hasSpillReference(formula: string): boolean {
  return new RegExp(reference).test(formula);
}

/** Writes `B2#` as the range that the formula in B2 fills, once it is known: `rangeOf` is asked with the sheet and `B2`. */
export function withoutSpillReferences(
  formula: string,
  ownSheet: string,
  rangeOf: (sheet: string, address: string) => string | undefined,
): string {
  return outsideText(formula, (code) =>
    code.replace(reference, (_, prefix: string | undefined, letters: string, row: string) => {
      const sheet = sheetIn(prefix, ownSheet);
      const range = rangeOf(sheet, `${letters.toUpperCase()}${row}`);
      return range === undefined ? "#REF!" : quotedSheet(sheet) + range;
    }),
  );
}
