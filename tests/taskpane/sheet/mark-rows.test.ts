import { describe, expect, test } from "vitest";
import { computedColumns } from "../../../taskpane/formulas/computed-columns";
import { addColumns } from "../../../taskpane/sheet/add-columns";
import { markRows, removeMarks } from "../../../taskpane/sheet/mark-rows";
import { computeFormulas } from "../../workbench/engine/compute-formulas";
import { loadBundle } from "../../../workbench/host/load-bundle";
import { areaAt } from "../../../workbench/host/excel/area";
import { bench, refusal, zoneAt } from "./bench-log";

const flags = computedColumns.filter(({ header }) => header === "Row flags");

async function flagged(): Promise<ReturnType<typeof bench>> {
  const host = bench();
  await addColumns(await zoneAt(host), flags, { band: '"coir, medium"', uncompensated: false });
  return host;
}

const formulasOf = ({ records }: ReturnType<typeof bench>): unknown[] => records.conditionalFormats.map(({ rule }) => rule?.["formula"]);

describe("markRows", () => {
  test("puts two rules on A2:H4 that look at the flag text in column H, with bold, slant and lines beside the colour", async () => {
    const host = await flagged();
    const { words } = await markRows(await zoneAt(host));
    expect(words).toBe('Marked the rows of Log at A2:H4 whose flags say more than "in band".');
    expect(host.records.conditionalFormats.map(({ area }) => [area.row, area.column, area.rowCount, area.columnCount])).toEqual([[1, 0, 3, 8], [1, 0, 3, 8]]);
    expect(formulasOf(host)).toEqual([
      '=AND(N("Runoff Ledger")=0,ISTEXT($H2),ISNUMBER(SEARCH("check reading",$H2)))',
      '=AND(N("Runoff Ledger")=0,ISTEXT($H2),AND($H2<>"",$H2<>"in band"))',
    ]);
    expect(host.records.conditionalFormats).toMatchObject([{ italic: true, borders: { EdgeTop: "Dash" } }, { bold: true, borders: { EdgeBottom: "Continuous" } }]);
  });

  test.each([
    ["in band", false, false],
    ["", false, false],
    ["runoff EC high; salt ratio high", false, true],
    ["check reading", true, true],
  ])("a flag of %j is doubted: %j, marked: %j", async (text, doubted, marked) => {
    const host = await flagged();
    await markRows(await zoneAt(host));
    const { host: functions, metadata } = loadBundle();
    const rules = formulasOf(host).map((rule) => String(rule).slice(1).replaceAll("$H2", `"${text}"`));
    const answers = await computeFormulas(rules, functions, metadata);
    expect(answers.map((cells) => cells[0]?.[0])).toEqual([doubted, marked]);
  });

  test("goes by the formula, whatever the person calls the column", async () => {
    const host = await flagged();
    host.store.write(areaAt(host.sheetId, 0, 7), [["Trouble?"]]);
    expect((await markRows(await zoneAt(host))).words).toContain("A2:H4");
  });

  test("names no function of ours in a rule, which the host would not take", async () => {
    const host = await flagged();
    await markRows(await zoneAt(host));
    expect(formulasOf(host).join("")).not.toContain("RUNOFF.");
  });

  test("twice is as good as once, and removing leaves a format of the person's own", async () => {
    const host = await flagged();
    const { sheetId, records } = host;
    const own = { id: "own", type: "Custom", area: areaAt(sheetId, 0, 0, 9, 2), rule: { formula: "=A1>3" }, stopIfTrue: false } as const;
    records.conditionalFormats.push({ ...own });
    await markRows(await zoneAt(host));
    await markRows(await zoneAt(host));
    expect(records.conditionalFormats).toHaveLength(3);
    expect((await removeMarks(sheetId)).words).toBe("The marks on Log are gone; other formats stay.");
    expect(formulasOf(host)).toEqual(["=A1>3"]);
    expect((await removeMarks(sheetId)).words).toBe("There are no marks of ours on Log.");
  });

  test("take back removes them; without the flag column it says what to do; a protected sheet is refused", async () => {
    const host = await flagged();
    await (await markRows(await zoneAt(host))).takeBack();
    expect(host.records.conditionalFormats).toEqual([]);
    host.records.sheet(host.sheetId).protected = true;
    expect(await refusal(async () => markRows(await zoneAt(host)))).toMatch(/protected/);
    const bare = bench();
    expect(await refusal(async () => markRows(await zoneAt(bare)))).toBe('Add the column "Row flags" first: it is what the marks go by.');
  });
});
