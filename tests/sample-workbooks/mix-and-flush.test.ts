import { describe, expect, it } from "vitest";
import { corners, placeOf } from "../../sample-workbooks/xlsx/address";
import { computeBook } from "../../workbench/engine/compute";
import { readXlsx } from "../../workbench/files/read-xlsx";
import { type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { committed } from "./committed";
import { elements, partsOf, shownText, storedCells } from "./parts";

/** Every expectation here is worked by hand from what is typed on the sheet; constants of chemistry are named with their source. */
function stored(file: string): (at: string) => string | number | undefined {
  const parts = partsOf(committed(file));
  const cells = new Map(storedCells(parts, "xl/worksheets/sheet1.xml").map((cell) => [cell.at, cell]));
  return (at) => {
    const cell = cells.get(at);
    if (cell?.value === undefined) return undefined;
    return cell.type === null ? Number(cell.value) : shownText(parts, cell);
  };
}

/** The cells beside a label in column A. */
function rowOf(at: ReturnType<typeof stored>, label: string): (column: string) => string | number | undefined {
  const row = Array.from({ length: 100 }, (_, i) => i + 1).find((each) => at(`A${each}`) === label);
  if (row === undefined) throw new Error(`no label ${label}`);
  return (column) => at(`${column}${row}`);
}

describe("mix-sheet.xlsx", () => {
  const at = stored("mix-sheet.xlsx");
  const answer = (label: string, column = "B"): string | number | undefined => rowOf(at, label)(column);

  it("aims at 0.5 + 1.7 x (1/2 + 1/2 x 3/7) = 0.5 + 1.7 x 5/7 = 1.7143 mS/cm on day 3 of 7", () => {
    expect(answer("EC to mix (mS/cm)")).toBeCloseTo(1.714286, 6);
  });

  it("takes 60 L x 1.2143 mS/cm / 0.25 mS/cm a mL/L = 291.4 mL of concentrate, four fifths of it, 233.1 mL, first", () => {
    expect(answer("Concentrate for the tank (mL)")).toBeCloseTo(291.4286, 4);
    expect(answer("of which first, four fifths (mL)")).toBeCloseTo(233.1429, 4);
  });

  it("brings 60 L of 2.0 to 1.7143: add 60 x 0.2857 / 1.2143 = 14.12 L of water, or swap 60 x 0.2857 / 1.5 = 11.43 L", () => {
    expect(answer("Is it as meant?")).toBe("too strong");
    expect(answer("Water to add, where there is room (L)")).toBeCloseTo(14.1176, 4);
    expect(answer("Or: drain this and fill up with water (L)")).toBeCloseTo(11.4286, 4);
  });

  // P is 61.95 of the 141.94 g in a mole of P2O5, K is 78.20 of the 94.20 g in a mole of K2O (IUPAC atomic weights).
  it.each([
    ["C", 88.0, "N 400 x 0.155 + 200 x 0.13 = 62 + 26"],
    ["D", 22.69, "P 100 x 0.52 x 0.43643 = 22.69"],
    ["E", 104.6, "K (200 x 0.46 + 100 x 0.34) x 0.83013 = 126 x 0.83013 = 104.6"],
    ["F", 76.0, "Ca 400 x 0.19 = 76"],
    ["G", 24.5, "Mg 250 x 0.098 = 24.5"],
    ["H", 32.25, "S 250 x 0.129 = 32.25"],
  ])("column %s adds up to %d mg/L: %s", (column, ppm) => {
    expect(answer("All feeds together (mg/L)", column)).toBeCloseTo(ppm, 1);
  });

  it("is balanced with the water's 48 Ca and 6 Mg: K/Ca 104.6/124 = 0.8, K/Mg 104.6/30.5 = 3.4, Ca/Mg 124/30.5 = 4.1", () => {
    expect(answer("Balance of K, Ca and Mg")).toBe("balanced");
  });

  // 159 mg/L HCO3 over 61.02 mg/meq is 2.606 meq/L. Carbonic acid's pK 6.35 (textbook value at 25 C): bicarbonate is 0.918 of the
  // carbon at pH 7.4 and 0.220 at 5.8, so 2.606 x (1 - 0.220 / 0.918) = 1.982 meq/L go, 118.9 meq in 60 L. Phosphoric acid gives
  // 1 + 10^(5.8 - 7.2) / (1 + 10^(5.8 - 7.2)) = 1.038 protons: 114.5 mmol x 98.0 mg = 11.22 g, 37.4 g of a 30 % bottle of
  // 1.18 g/mL (handbook density): 31.7 mL, rounded down.
  it("doses 31 mL of 30 % phosphoric acid for 60 L of 159 mg/L HCO3 from pH 7.4 to 5.8", () => {
    expect(answer("Acid (mL; citric acid g)")).toBe(31);
    expect(answer("Acid (mL; citric acid g)", "I")).toMatch(/of 2\.61 meq\/L alkalinity: pH 7\.4 to 5\.8/);
  });
});

describe("flush-sheet.xlsx", () => {
  const at = stored("flush-sheet.xlsx");
  const answer = (label: string, column = "B"): string | number | undefined => rowOf(at, label)(column);

  it("aims at 3.15 mS/cm, a tenth inside the upper end of 3.5 for medium feeders (NCSU PourThru)", () => {
    expect(answer("EC to reach (mS/cm)")).toBeCloseTo(3.15, 9);
  });

  // 12 L of peat hold 65 %, 7.8 L; 0.7 of the water mixes: 0.08974 a litre. ln(6.6 / 2.75) = 0.87547 over that is 9.755 L, in portions
  // of at most 1.95 L six of 1.626 L; each leaves (2.75 / 6.6)^(1/6) = 0.86423 of the excess over 0.4.
  it.each([
    [1, 1.626, 1.626, 6.104],
    [2, 1.626, 3.252, 5.330],
    [3, 1.626, 4.878, 4.660],
    [4, 1.626, 6.503, 4.082],
    [5, 1.626, 8.129, 3.582],
    [6, 1.626, 9.755, 3.15],
  ])("plans portion %d of %d L, %d L so far, to %d mS/cm", (portion, litres, soFar, ec) => {
    const row = Array.from({ length: 80 }, (_, i) => i + 1).find((each) => at(`J${each}`) === portion) ?? 0;
    [litres, soFar, ec].forEach((expected, i) => { expect(at(`${"KLM"[i] ?? ""}${row}`)).toBeCloseTo(expected, 2); });
  });

  it("has poured 3 x 1.7 = 5.1 L and keeps going: 7.00, 5.63, 4.82, 3.91 still fall and lie above 3.15", () => {
    expect(["portion 1", "portion 2", "portion 3"].map((label) => answer(label, "E"))).toEqual([5.63, 4.82, 3.91]);
    expect(answer("Poured so far (L)")).toBeCloseTo(5.1, 9);
    expect(["portion 1", "portion 2", "portion 3"].map((label) => answer(label, "F"))).toEqual(["keep going", "keep going", "keep going"]);
    expect(answer("The stop check says")).toBe("keep going");
  });

  // Weighted line through ln(EC - 0.4) at 0, 1.7, 3.4, 5.1 L, weights (EC - 0.4)^2: 43.56, 27.35, 19.54, 12.32. Mean L 1.7102, mean ln
  // 1.67323; slope -39.542 / 324.758 = -0.12176 a litre. ln(3.51 / 2.75) = 0.24401 over that is 2.00 L.
  it("needs 2.00 L more by its own readings", () => {
    expect(answer("Litres still needed (L)")).toBeCloseTo(2.004, 2);
  });

  it("feeds 0.4 + 1.5 x (1/2 + d/14): 1.15 on 9 March 2026 (day 46090) at 9 o'clock, 1.364 two days later, 1.9 from day 7", () => {
    const fed = ["0 h", "48 h", "day 7"].map((look) => Number(answer(look, "C")).toFixed(3));
    expect(fed).toEqual(["1.150", "1.364", "1.900"]);
    expect(answer("0 h")).toBe(46_090.375);
  });

  /** What the sheet answers once the fourth portion is written down. */
  async function withFourth(ph: number): Promise<CellValue> {
    const book = await readXlsx(committed("flush-sheet.xlsx"));
    const [sheet] = book.sheets;
    const row = Array.from({ length: 80 }, (_, i) => i + 1).find((each) => at(`A${each}`) === "portion 4") ?? 0;
    if (sheet === undefined) throw new Error("no sheet");
    const cells = new Map([...sheet.cells, [`C${row}`, { value: 1.7 }], [`D${row}`, { value: ph }], [`E${row}`, { value: 3.1 }]]);
    const { host, metadata } = loadBundle();
    const [computed] = await computeBook({ ...book, sheets: [{ ...sheet, cells }] }, host, metadata);
    return computed?.values.get(`F${row}`);
  }

  it("does what the README says: a fourth portion at EC 3.1 stops it at pH 5.6 and pauses it at pH 5.2, below peat's 5.4 (MSU)", async () => {
    expect(await withFourth(5.6)).toBe("stop: in band");
    expect(await withFourth(5.2)).toBe("pause and measure again");
  });

  it("draws the fifteen readings in a native chart beside the plan", () => {
    const parts = partsOf(committed("flush-sheet.xlsx"));
    const cells = elements(parts, "xl/charts/chart1.xml", "c:val")[0]?.getElementsByTagName("c:f")[0]?.textContent ?? "";
    const [first, last] = corners(cells.replace("Flush!", "").replaceAll("$", ""));
    expect([at(`A${first.row + 1}`), at(`A${last.row + 1}`)]).toEqual(["before the flush", "portion 14"]);
  });
});

/** The plan stands beyond the printed columns; each portion's line says it again. */
describe.each([["mix-sheet.xlsx", "I"], ["flush-sheet.xlsx", "H"]])("%s", (file, lastColumn) => {
  const parts = partsOf(committed(file));
  const sheet = "xl/worksheets/sheet1.xml";

  it(`prints on one upright page that holds every cell up to column ${lastColumn}`, () => {
    const setUp = elements(parts, sheet, "pageSetup")[0];
    expect(["orientation", "fitToWidth", "fitToHeight"].map((name) => setUp?.getAttribute(name))).toEqual(["portrait", "1", "1"]);
    const area = elements(parts, "xl/workbook.xml", "definedName").find((name) => name.getAttribute("name") === "_xlnm.Print_Area")?.textContent ?? "";
    const [, last] = corners(area.replace(/^.*!/, "").replaceAll("$", ""));
    expect(last.column).toBe(placeOf(`${lastColumn}1`).column);
    for (const { at } of storedCells(parts, sheet)) expect(placeOf(at).row).toBeLessThanOrEqual(last.row);
  });
});
