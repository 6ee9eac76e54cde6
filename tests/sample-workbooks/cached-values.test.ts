import { describe, expect, it } from "vitest";
import { computeBook } from "../../workbench/engine/compute";
import { type BlankDelivery, blankDeliveries, type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { readXlsx } from "../../workbench/files/read-xlsx";
import { committed, committedWorkbooks } from "./committed";
import { partsOf, sheetPaths, type StoredCell, shownText, storedCells } from "./parts";

const { host, metadata } = loadBundle();

/** Whether a stored cell holds a computed value: numbers within 1e-9 of their size, anything else exactly. */
function holds(stored: string | undefined, type: string | null, computed: CellValue): boolean {
  switch (typeof computed) {
    case "number":
      return type === null && Math.abs(Number(stored) - computed) <= 1e-9 * Math.max(1, Math.abs(computed));
    case "string":
      return (stored ?? "") === computed && (type === "str" || type === "s" || computed === "");
    case "boolean":
      return type === "b" && stored === (computed ? "1" : "0");
    default:
      return type === "e" && stored === computed?.error;
  }
}

describe.each(committedWorkbooks)("%s", (name) => {
  const parts = partsOf(committed(name));
  const sheets = sheetPaths(parts).map((path) => new Map(storedCells(parts, path).map((cell): [string, StoredCell] => [cell.at, cell])));

  it.each(Object.keys(blankDeliveries) as BlankDelivery[])("opened by the workbench, holds beside every formula what it computes, blanks handed over as %s", async (blank) => {
    const computed = await computeBook(await readXlsx(committed(name)), host, metadata, { blank });
    const wrong = computed.flatMap((sheet, i) =>
      [...sheet.values].filter(([at, value]) => {
        const cell = sheets[i]?.get(at);
        return cell === undefined || !holds(shownText(parts, cell), cell.type, value);
      }),
    );
    expect(wrong).toEqual([]);
    const formulas = sheets.map((cells) => [...cells.values()].filter(({ formula }) => formula !== undefined).map(({ at }) => at));
    expect(formulas.flat().length).toBeGreaterThan(50);
    formulas.forEach((addresses, i) => {
      expect([...(computed[i]?.values.keys() ?? [])]).toEqual(expect.arrayContaining(addresses));
    });
  });
});

describe("errors in the samples", () => {
  const errorsIn = (name: string): string[] => {
    const parts = partsOf(committed(`${name}.xlsx`));
    return sheetPaths(parts).flatMap((path) => storedCells(parts, path).filter(({ type }) => type === "e").map(({ at }) => at));
  };

  it("no formula of a tidy log, of the mix sheet or of the flush sheet ends in one", () => {
    expect(["healthy-bench", "salt-buildup", "ph-lockout", "mix-sheet", "flush-sheet"].flatMap(errorsIn)).toEqual([]);
  });

  it("a messy log shows one beside >1500, 2900 / 3010 and 2.4 typed as ppm; ~700, 5,8 and 1000 ppm are read, and ? is no reading", () => {
    expect(errorsIn("many-vessels-messy")).toEqual(
      ["L10", "M10", "N10", "M27", "L35", "M35", "N35"],
    );
  });
});

describe("the comparison itself", () => {
  it("tells 1.5 from 1.50001, the text 1.5 from the number, and one error from another", () => {
    expect(holds("1.5", null, 1.5)).toBe(true);
    expect(holds("1.50001", null, 1.5)).toBe(false);
    expect(holds("1.5", "str", 1.5)).toBe(false);
    expect(holds("in band", "str", "in band")).toBe(true);
    expect(holds("in  band", "str", "in band")).toBe(false);
    expect(holds("#N/A", "e", { error: "#VALUE!" })).toBe(false);
    expect(holds(undefined, null, 0)).toBe(false);
  });
});
