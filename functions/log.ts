import * as engine from "../src/index";
import { eachCell } from "./answers";
import { choice, content } from "./cells";

/**
 * A reading as it stands in a log, read as the log reader reads it: "1,8 mS", "n/a", 1800 in uS/cm, 70 in F. What the reader leaves out is refused with the reason.
 * @customfunction READING
 * @helpurl https://localhost:3000/docs/functions.html#reading
 * @param cell what stands in the log, cell or range
 * @param unit of the log's column: mS/cm, uS/cm, dS/m, mS/m, S/m, CF, ppm 500, ppm 640, ppm 700, pH, L, mL, gal, qt, fl oz, C, F, %, share
 * @returns mS/cm, pH, L, C or %
 * @remarks A 0 counts as not measured, but for volumes. It sees one cell: a reading that stands out from its neighbours is for the pane to find.
 * @example =RUNOFF.READING("1800 uS/cm", "mS/cm") -> 1.8
 * @example =RUNOFF.READING(500, "mL") -> 0.5
 * @see common practice
 */
export function reading(cell: any[][], unit: any[][]): any[][] {
  return eachCell(
    (given: string | number | boolean, named: engine.NamedLogUnit) => engine.loggedReading(given, named) ?? "",
    { cells: cell, read: content, called: "reading", quick: [-Infinity, Infinity] },
    choice(unit, "unit", engine.logUnitNamed),
  );
}
