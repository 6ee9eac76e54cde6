import fc from "fast-check";
import { expect, test } from "vitest";
import { computeBook } from "../../workbench/engine/compute";
import { patchXlsx } from "../../workbench/files/patch-xlsx";
import { readXlsx } from "../../workbench/files/read-xlsx";
import { FunctionsHost } from "../../workbench/host/functions-host";
import { rawWorkbook } from "../workbench/files/raw-workbook";
import { times } from "./times";

const letters = "ABCDEF";
const depth = 8;

type Content = { readonly typed: number | string } | { readonly spill: readonly [rows: number, columns: number] };

/** A sheet of 8 rows and 6 columns in which some cells are typed and some hold a formula that fills others. */
const content: fc.Arbitrary<Content> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ typed: fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.constantFrom("note", "1,8", "", "#N/A ?")) }) },
  { weight: 1, arbitrary: fc.record({ spill: fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 })) }) },
);
const sheet = fc.dictionary(
  fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 1, max: depth })).map(([column, row]) => `${letters.charAt(column)}${row}`),
  content,
  { maxKeys: 16 },
);

function cellXml(address: string, cell: Content): string {
  if ("spill" in cell) {
    const [rows, columns] = cell.spill;
    return `<c r="${address}" cm="1"><f t="array" ref="${address}">_xlfn.SEQUENCE(${rows},${columns},10)</f><v>0</v></c>`;
  }
  return typeof cell.typed === "number"
    ? `<c r="${address}"><v>${cell.typed}</v></c>`
    : `<c r="${address}" t="inlineStr"><is><t>${cell.typed}</t></is></c>`;
}

function rowsXml(cells: Readonly<Record<string, Content>>): string {
  return Array.from({ length: depth }, (_, n) => {
    const own = Array.from(letters, (letter) => `${letter}${n + 1}`).flatMap((address) => {
      const cell = cells[address];
      return cell === undefined ? [] : [cellXml(address, cell)];
    });
    return own.length === 0 ? "" : `<row r="${n + 1}">${own.join("")}</row>`;
  }).join("");
}

test("whatever a sheet holds, every typed cell is the same after a recalculation, and a second one changes nothing", async () => {
  await fc.assert(
    fc.asyncProperty(sheet, async (cells) => {
      const before = rawWorkbook({ sheets: [{ name: "Log", rows: rowsXml(cells) }] });
      const once = patchXlsx(before, await compute(before)).bytes;
      const [was, is] = [(await readXlsx(before)).sheets[0]?.cells, (await readXlsx(once)).sheets[0]?.cells];
      for (const [address, cell] of Object.entries(cells)) if ("typed" in cell) expect(is?.get(address)).toEqual(was?.get(address));
      const again = patchXlsx(once, await compute(once));
      expect(again.changed).toBe(0);
      expect(again.bytes).toEqual(once);
    }),
    times(60),
  );
});

async function compute(bytes: Uint8Array) {
  return computeBook(await readXlsx(bytes), new FunctionsHost(), { functions: [] });
}
