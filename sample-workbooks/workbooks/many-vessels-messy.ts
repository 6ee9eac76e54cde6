import { manyVesselsEntries } from "../scenario/many-vessels";
import { messyHeaders, messyRows, messyUnits, type Scribble } from "../scenario/mess";
import { type Cell, type WorkbookSpec } from "../xlsx/spec";
import { formula, gridOf, typed } from "./grid";

const firstRow = 5;
const rows = messyRows(manyVesselsEntries);
const lastRow = firstRow + rows.length - 1;

/** The pen's ppm are on the 500 scale: the formulas say so, because a ppm without its scale means nothing. */
const ec = (cell: string): string => `RUNOFF.ECFROMPPM(${cell},500)`;

/** The grower's own limits for the whole bench, G2 to J2: pH low, pH high, EC low, EC high. */
const limits = [undefined, undefined, undefined, undefined, typed("limits pH EC", "quiet"), typed(5.4), typed(6.5), typed(0.8), typed(4)];

function messyRow(scribbled: readonly Scribble[], i: number): (Cell | undefined)[] {
  const row = firstRow + i;
  const [date] = scribbled;
  const dated = typeof date === "number" && date < 100_000;
  return [
    ...scribbled.map((value, column) => {
      if (value === undefined || value === "") return undefined;
      if (column === 0) return typed(value, dated ? "dayFirst" : "plain");
      return typed(value, column === 1 && typeof value === "number" && value < 1 ? "clock" : "plain");
    }),
    formula(ec(`F${row}`), "ratio"),
    formula(`RUNOFF.SALTRATIO(${ec(`F${row}`)},${ec(`D${row}`)})`, "ratio"),
    formula(`RUNOFF.ROWFLAG(E${row},${ec(`D${row}`)},G${row},${ec(`F${row}`)},$G$2:$J$2)`, "words"),
  ];
}

/** A whole bench in one sheet as it was typed: titles, units under the headers, faults, averages at the foot. */
export const manyVesselsWorkbook: WorkbookSpec = {
  title: "A whole bench, typed in a hurry",
  names: [],
  sheets: [
    {
      name: "bench 2026",
      cells: gridOf([
        [typed("BENCH LOG january, all pots", "title")],
        [typed("ppm = 500 scale, both pens the old ones"), ...limits],
        [...messyHeaders, "EC out", "ratio", "flag"].map((text) => typed(text, "headingLeft")),
        [...messyUnits.map((text) => (text === "" ? undefined : typed(text, "quiet"))), typed("mS/cm", "quiet")],
        ...rows.map(messyRow),
        [],
        [undefined, undefined, typed("average"), formula(`AVERAGE(D${firstRow}:D${lastRow})`, "ratio"), undefined, formula(`AVERAGE(F${firstRow}:F${lastRow})`, "ratio")],
        [undefined, undefined, typed("rows"), formula(`COUNT(F${firstRow}:F${lastRow})`, "words")],
      ]),
      widths: [12, 9, 14, 10, 8, 12, 8, 8, 8, 7, 28, 9, 9, 30],
      frozen: { rows: 4, columns: 0 },
    },
  ],
};
