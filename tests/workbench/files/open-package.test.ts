import { strToU8, zipSync } from "fflate";
import { expect, test } from "vitest";
import { FileProblem } from "../../../workbench/files/file-problem";
import { limits, openPackage } from "../../../workbench/files/open-package";
import { readXlsx } from "../../../workbench/files/read-xlsx";
import { rawWorkbook } from "./raw-workbook";

const good = rawWorkbook({ sheets: [{ name: "Log", rows: '<row r="1"><c r="A1"><v>1</v></c></row>' }] });

/** What a reader of .xlsx is handed and cannot use. */
const bad: [what: string, bytes: Uint8Array, says: string][] = [
  ["nothing", new Uint8Array(), "it is empty"],
  ["a text table with the wrong ending", strToU8("Date,EC\n"), "it is not an .xlsx workbook"],
  ["an encrypted workbook", Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]), "it is encrypted"],
  ["another zip file", zipSync({ "mimetype": strToU8("application/epub+zip") }), "not an .xlsx workbook"],
  ["the binary kind of workbook", zipSync({ "[Content_Types].xml": strToU8(""), "xl/workbook.bin": strToU8("") }), ".xlsb"],
  ["half a workbook", good.slice(0, good.length / 2), "it is damaged"],
  ["a workbook with its middle overwritten", overwritten(good), "it is damaged"],
  ["a workbook whose sheet breaks off", rawWorkbook({ sheets: [{ name: "Log", rows: '<row r="1"><c r="A1">' }] }), "it is damaged"],
  ["a workbook without its workbook part", withoutWorkbook(), "it is damaged"],
  ["a zip file that unpacks to far more than it is", zipSync({ "xl/workbook.xml": new Uint8Array(30 * 1024 * 1024) }), "packed more than 200 times"],
];

function overwritten(bytes: Uint8Array): Uint8Array {
  return bytes.slice().fill(0x41, Math.floor(bytes.length * 0.3), Math.floor(bytes.length * 0.5));
}

function withoutWorkbook(): Uint8Array {
  return zipSync({ "[Content_Types].xml": strToU8("<Types/>"), "_rels/.rels": strToU8("<Relationships/>") });
}

test.each(bad)("%s is refused in one line", async (_, bytes, says) => {
  const problem = await readXlsx(bytes).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(problem).toBeInstanceOf(FileProblem);
  expect((problem as FileProblem).message).toContain(says);
  expect((problem as FileProblem).message).not.toContain("\n");
});

test(`a file of more than ${limits.packedBytes / 1024 / 1024} MB is refused before it is unpacked`, () => {
  const huge = new Uint8Array(limits.packedBytes + 1);
  huge.set(good);
  expect(() => openPackage(huge)).toThrow(limits.tooLarge);
});

test("a whole workbook is opened", () => {
  expect(Object.keys(openPackage(good))).toContain("xl/workbook.xml");
});
