import { expect, test } from "vitest";
import { FileProblem } from "../../../workbench/files/file-problem";
import { readCsv } from "../../../workbench/files/read-csv";

function values(text: string | Uint8Array): Record<string, unknown> {
  const [sheet] = readCsv(typeof text === "string" ? new TextEncoder().encode(text) : text, "Log").sheets;
  return Object.fromEntries([...(sheet?.cells ?? [])].map(([address, { value }]) => [address, value]));
}

test.each([
  ["a comma", "Date,EC\n2026-03-01,1.8\n"],
  ["a semicolon", "Date;EC\n2026-03-01;1.8\n"],
  ["a tab", "Date\tEC\n2026-03-01\t1.8\n"],
  ["a comma after a byte order mark, with Windows line ends", "\ufeffDate,EC\r\n2026-03-01,1.8\r\n"],
])("a table cut by %s has two columns; the date stays text, the reading is a number", (_, text) => {
  expect(values(text)).toEqual({ A1: "Date", B1: "EC", A2: "2026-03-01", B2: 1.8 });
});

test("what could be read otherwise stays text: 1,8 and 007 and >5 and 1e3 and TRUE and a formula and 17 digits", () => {
  const cells = ["1,8", "007", ">5", "1e3", "TRUE", "=1+1", "12345678901234567", "1.8 mS", "-"];
  const quoted = cells.map((cell) => `"${cell}"`).join(";");
  expect(Object.values(values(`${quoted}\n`))).toEqual(cells);
});

test("plain readings are numbers: 0, -2.5, .5 and 1.80 with blanks around it", () => {
  expect(Object.values(values("a,b,c,d\n0,-2.5,.5, 1.80 \n")).slice(4)).toEqual([0, -2.5, 0.5, 1.8]);
});

test("beside decimal commas 1.234 may be a thousand and stays text; without them it is a number", () => {
  expect(values("a;b\n1,8;1.234\n")["B2"]).toBe("1.234");
  expect(values("a;b\n1.8;1.234\n")["B2"]).toBe(1.234);
});

test("rows keep their place: a blank line, a short row, a note over two lines with a comma and quotes", () => {
  const table = 'Pot,EC,Note\n\nP1,1.8\nP2,2.1,"flushed, then\n""rested"""\nP3,2,5" pot\n';
  expect(values(table)).toEqual({
    A1: "Pot", B1: "EC", C1: "Note", A3: "P1", B3: 1.8, A4: "P2", B4: 2.1, C4: 'flushed, then\n"rested"', A5: "P3", B5: 2, C5: '5" pot',
  });
});

test("a long note over the end of the rows that are looked at first does not hide what cuts the table", () => {
  const rows = Array.from({ length: 80 }, (_, n) => `${n};"one\ntwo\nthree"`);
  expect(values(rows.join("\n"))["B80"]).toBe("one\ntwo\nthree");
});

test("UTF-16 from a spreadsheet and Windows-1252 from an older one are both read", () => {
  const utf16 = Uint8Array.from([0xff, 0xfe, ...Array.from("a\tµS\n1\t2\n", (sign) => [sign.charCodeAt(0), 0]).flat()]);
  expect(values(utf16)).toEqual({ A1: "a", B1: "µS", A2: 1, B2: 2 });
  expect(values(Uint8Array.from([0x61, 0x2c, 0xb5, 0x53, 0x0a]))).toEqual({ A1: "a", B1: "µS" });
});

test.each([
  ["nothing", "", "it is empty"],
  ["bytes of a picture", "\u0089PNG\0\0,\0", "it is not a text table"],
  ["a quote that is never closed", 'a,b\n"c,d\n', "it is not a text table"],
])("%s is refused in one line", (_, text, message) => {
  expect(() => values(text)).toThrow(FileProblem);
  expect(() => values(text)).toThrow(message);
});
