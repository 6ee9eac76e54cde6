import { parseRange } from "hucre";
import type { Tag } from "sax";
import { FileProblem } from "./file-problem";
import { localName, readXml } from "./xml";

/** Sheets nest their tags about ten deep, drawings thirty; only a trap goes further. */
const deepest = 200;
/** As many cells as all array formulas of a workbook may fill together: a column down a whole sheet. */
const mostArrayCells = 1_048_576;

/** What all parts of one package use up together. */
interface Allowance {
  arrayCells: number;
}

/** Reads a part once through: a reader in a hurry takes what a broken one still holds for all of it, and follows a trap to its end. */
export function checkPart(bytes: Uint8Array, allowance: Allowance): void {
  let depth = 0;
  readXml(bytes, {
    open: (tag) => {
      depth += 1;
      if (depth > deepest) throw new FileProblem(`it nests its tags more than ${deepest} deep, which no workbook needs: it is not opened`);
      checkArrayFormula(tag, allowance);
    },
    close: () => { depth -= 1; },
  });
}

function checkArrayFormula({ name, attributes: { t, ref } }: Tag, allowance: Allowance): void {
  if (t !== "array" || ref === undefined || localName(name) !== "f") return;
  const { startRow, endRow, startCol, endCol } = parseRange(ref);
  allowance.arrayCells += (endRow - startRow + 1) * (endCol - startCol + 1);
  if (allowance.arrayCells <= mostArrayCells) return;
  throw new FileProblem(`its array formulas fill more than ${mostArrayCells} cells, the one over ${ref} among them: it is not opened`);
}
