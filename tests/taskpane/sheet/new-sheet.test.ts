import { describe, expect, test } from "vitest";
import { addSheet } from "../../../taskpane/sheet/new-sheet";
import { flushSheet } from "../../../taskpane/templates/flush-sheet";
import { meterSheet } from "../../../taskpane/templates/meter-sheet";
import { mixSheet } from "../../../taskpane/templates/mix-sheet";
import { watchSheet } from "../../../taskpane/templates/watch-sheet";
import { areaAt } from "../../../workbench/host/excel/area";
import { bench, filledCells, refusal } from "./bench-log";

const idOf = ({ store }: ReturnType<typeof bench>, name: string): string => store.sheets().find((sheet) => sheet.name === name)?.id ?? "";

describe.each([["Mix", mixSheet()], ["Flush", flushSheet()], ["Meter", meterSheet()], ["Watch", watchSheet()]] as const)("addSheet %s", (name, template) => {
  test("writes every cell of the template on a sheet of its own, shows it, and leaves the log", async () => {
    const host = bench();
    const log = filledCells(host.store, host.sheetId);
    expect((await addSheet(template)).words).toBe(`Made the sheet ${name}. Nothing else was touched.`);
    const id = idOf(host, name);
    const expected = template.rows.flatMap((row, r) => row.flatMap((cell, c) => {
      const content = cell?.formula === undefined ? cell?.value : `=${cell.formula}`;
      return content === undefined || content === "" ? [] : [[`${r},${c}`, content] as const];
    }));
    expect(filledCells(host.store, id)).toEqual(Object.fromEntries(expected));
    expect(filledCells(host.store, host.sheetId)).toEqual(log);
    expect(host.store.activeSheetId()).toBe(id);
  });

  test("gives each box a line around it, a rule and a hint, and prints on one page", async () => {
    const host = bench();
    await addSheet(template);
    const id = idOf(host, name);
    const boxes = template.rows.flatMap((row, r) => row.flatMap((cell, c) => (cell?.accepts === undefined ? [] : [{ r, c, hint: cell.accepts.hint }])));
    expect(boxes.length).toBeGreaterThan(10);
    for (const { r, c, hint } of boxes) {
      expect(host.store.look(r, c, id).borders?.["EdgeTop"]).toBeTruthy();
      expect(host.records.validations.find(({ area }) => area.row === r && area.column === c)?.prompt).toMatchObject({ message: hint });
    }
    expect(host.records.sheet(id).pageLayout).toMatchObject({ zoom: { horizontalFitToPages: 1, verticalFitToPages: 1 } });
  });

  test("every row is high enough for its largest text and all its lines", async () => {
    const host = bench();
    await addSheet(template);
    const id = idOf(host, name);
    const heights = template.rows.map((_, row) => host.store.box(areaAt(id, row, 0)).height);
    expect(heights).toEqual(template.heights);
  });

  test("beside a sheet of that name it takes the next free one; take back deletes it again", async () => {
    const host = bench();
    host.store.addSheet(name.toUpperCase());
    const { words, takeBack } = await addSheet(template);
    expect(words).toContain(`${name} 2`);
    expect(await takeBack()).toBe(`Taken back: the sheet ${name} 2 is gone.`);
    expect(host.store.sheets().map((sheet) => sheet.name)).toEqual(["Log", name.toUpperCase()]);
  });

  test("take back leaves a sheet on which a box was filled in", async () => {
    const host = bench();
    const { takeBack } = await addSheet(template);
    host.store.type(areaAt(idOf(host, name), 5, 1), 12);
    expect(await refusal(takeBack)).toMatch(/was written on since.*it stays/);
    expect(idOf(host, name)).not.toBe("");
  });

  test("while a cell is edited it says so and makes no sheet", async () => {
    const host = bench();
    host.switches.cellEditing = true;
    expect(await refusal(() => addSheet(template))).toMatch(/being edited/);
    expect(host.store.sheets()).toHaveLength(1);
  });

  test("every label that asks for or gives an amount says its unit", () => {
    const unitless = /pH|Pot|Medium|Feeder|Acid|Its unit|Alkalinity|Limits|Balance|Day and time|As meant|as meant|The EC, by|What was done|by the ramp|EC meter corrects|Today/;
    const labels = template.rows.flatMap(([label, box]) =>
      label?.style === "label" && typeof label.value === "string" && (box?.style === "input" || box?.style === "result") ? [label.value] : []);
    expect(labels.filter((label) => !/\(.+\)$/.test(label) && !unitless.test(label) && !/^portion|^before|^\d+ h$|^day \d|^no\. \d/.test(label))).toEqual([]);
  });
});

test("the flush sheet draws runoff EC by reading as a chart of the host", async () => {
  const host = bench();
  await addSheet(flushSheet());
  expect(host.records.charts).toMatchObject([{ type: "LineMarkers", title: "Runoff EC, reading by reading (mS/cm)" }]);
  expect(host.records.charts[0]?.source).toMatchObject({ row: 26, column: 4, rowCount: 16, columnCount: 1 });
});
