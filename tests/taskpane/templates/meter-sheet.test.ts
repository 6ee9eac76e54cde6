import { describe, expect, test } from "vitest";
import { readLog } from "../../../src/index";
import { meterSheet } from "../../../taskpane/templates/meter-sheet";
import { computed, rowOf, type Sheet } from "./computed";

const template = meterSheet();
const first = rowOf(template, "no. 1");
const record = rowOf(template, "Record");

/** What is typed into the first lines of the record, from its date on. */
const typed = (...lines: readonly (readonly (string | number | undefined)[])[]): Record<string, string | number | undefined> =>
  Object.fromEntries(lines.flatMap((cells, line) => ["B", "C", "D", "E", "F", "G", "K", "L", "M"].map((column, i) => [`${column}${first + line}`, cells[i]])));

const today = { Today: 46_100 };
/** 98.8 % and -15 mV: -15 and 160 mV over 2.995 pH at 25 C, 59.16 mV a pH (Nernst; phthalate 4.005, [iupac-ph-2002]). */
const sound = [46_090, 7, -15, 4.01, 160, 25, 1.413, 1.41, 25];

const words = (sheet: Sheet): unknown[] => ["pH pen", "EC meter", "Write into the log's notes"].map(sheet.beside);

describe("the meter sheet", () => {
  test("7.00 at -15 mV and 4.01 at 160 mV: slope 175 / 2.995 / 59.16 = 98.8 %, offset -15 mV, good; 1.41 in 1.413 is 0.2 % low, good", async () => {
    const sheet = await computed(template, { ...today, ...typed(sound) });
    expect(Number(sheet.at(`H${first}`))).toBeCloseTo(98.8, 1);
    expect(sheet.at(`I${first}`)).toBe(-15);
    expect(Number(sheet.at(`N${first}`))).toBeCloseTo(-0.212, 3);
    expect(words(sheet)).toEqual(["good", "good", "calibrated both pens"]);
    expect([sheet.at(`P${first}`), sheet.beside("Next calibration"), sheet.at(`E${rowOf(template, "Next calibration")}`)]).toEqual([46_104, 46_104, 4]);
  });

  test("an empty record shows nothing, and a line half written is no answer: a blank mV never passes for 0", async () => {
    for (const cells of [{}, typed([46_090, 7, undefined, 4.01, 160, 25, 1.413])]) {
      const sheet = await computed(template, { ...today, ...cells });
      expect([...words(sheet), ...["H", "I", "J", "N", "O"].map((column) => sheet.at(`${column}${first}`))]).toEqual(Array(8).fill(""));
    }
  });

  test("a worn pen (80 mV over 2.995 pH: 45 %) is rejected, a meter 5.2 % low is not good: nothing is noted", async () => {
    const sheet = await computed(template, { ...today, ...typed([46_090, 7, 0.1, 4.01, 80, 25, 1.413, 1.34, 25]) });
    expect(words(sheet)).toEqual(["reject", "clean and repeat", ""]);
  });

  test("a pen that shows pH only: within 0.1 of the buffers at their temperature is good, 0.2 off is not (7.00 is 7.04 at 15 C)", async () => {
    const pen = { ...today, "The pH pen shows": "pH" };
    expect(words(await computed(template, { ...pen, ...typed([46_090, 7, 7.1, 4.01, 3.95, 15]) }))).toEqual(["good", "", "calibrated pH pen"]);
    expect(words(await computed(template, { ...pen, ...typed([46_090, 7, 7.24, 4.01, 4.0, 15]) }))).toEqual(["calibrate and repeat", "", ""]);
  });

  test("the last line counts: what was bad is good once it was read again; past the day it is overdue", async () => {
    const sheet = await computed(template, { Today: 46_107, ...typed([46_080, 7, 15, 4.01, 160, 25, 1.413, 1.2, 25], sound) });
    expect(words(sheet)).toEqual(["good", "good", "calibrated both pens"]);
    const row = rowOf(template, "Next calibration");
    expect([sheet.at(`E${row}`), sheet.at(`F${row}`)]).toEqual([-3, "days overdue"]);
  });

  test("only what the last line holds is noted: a pH pen alone, a fortnight after both", async () => {
    const sheet = await computed(template, { ...today, ...typed(sound, [46_100, 7, -15, 4.01, 160, 25]) });
    expect(words(sheet)).toEqual(["good", "good", "calibrated pH pen"]);
  });

  test.each(["calibrated both pens", "calibrated pH pen", "calibrated EC pen"])("the log reads %j as a calibration", (note) => {
    const cells = [["Date", "Runoff pH", "Runoff EC mS/cm", "Notes"], ["2026-03-01", 6, 2, note], ["2026-03-02", 6.1, 2.1, ""]];
    expect(readLog({ cells }).rows[0]?.events.map(({ kind }) => kind)).toEqual(["calibration"]);
  });

  test("has a heading over every column, and stands on one landscape page", () => {
    expect(template.rows[record - 1]?.map((cell) => cell?.value).every((text) => text !== undefined)).toBe(true);
    expect([template.landscape, template.printArea]).toEqual([true, `A1:P${template.rows.length}`]);
  });
});
