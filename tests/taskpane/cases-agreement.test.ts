import { describe, expect, it } from "vitest";
import { inTime, judge, type LogRow, type PotReport, reportOf } from "../../src/index";
import { forPot, noChoices } from "../../taskpane/choices";
import { rootZoneOf } from "../../taskpane/root-zone";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { foundIn } from "../../workbench/timeline/findings";
import { caseBook, type PotCase } from "../cases/case-book";
import { caseGrid, readCase } from "../cases/case-log";
import { bandOf, judgedPots } from "../cases/judged";

const { host } = loadBundle();
const cases = caseBook().flatMap((theme) => theme.cases);
const each = cases.map((pot) => [pot.title, pot] as const);

interface Printed {
  readonly course: readonly { readonly says: string }[];
}

type Field = "vessel" | "day" | (typeof measured)[number] | (typeof others)[number];
const column = (rows: readonly LogRow[], field: Field): Matrix => rows.map((row): CellValue[] => [row[field]]);
const bandCells = ({ band, limits }: PotCase): Matrix =>
  limits === undefined ? [[band]] : limits.map((limit) => [limit]);
const measured = ["inputPh", "inputEc", "runoffPh", "runoffEc"] as const;
const others = ["inputLitres", "runoffLitres", "notes"] as const;

/** The pane asks for medium and feeder: an ordinary drain is what it holds against them. */
const isDrain = (pot: PotCase): boolean => pot.band !== undefined && bandOf(pot).sample === "drain";

/** What DIAGNOSE says in a cell of the rows of one pot. */
function diagnosed(pot: PotCase, rows: readonly LogRow[]): CellValue[] {
  const series = measured.map((field) => column(rows, field));
  const more = others.map((field) => column(rows, field));
  const given = [...series, bandCells(pot), undefined, [[true]], column(rows, "day"), ...more];
  return [...(host.call("DIAGNOSE", given, "empty")[0] ?? [])];
}

/** What a cell can be given of a row: it knows no temperature, and no cell that the reader left out. */
const asInCells = (row: LogRow): LogRow => ({
  ...row,
  airCelsius: undefined,
  humidityPercent: undefined,
  solutionCelsius: undefined,
  unread: undefined,
});

const ownRows = (pot: PotCase, { vessel }: PotReport): LogRow[] =>
  readCase(pot).rows.filter((row) => row.vessel === vessel);

describe("of the same rows the same is said", () => {
  it.each(each)("%s: DIAGNOSE gives the judgement of the rows as a cell can know them, every step of it", (_, pot) => {
    for (const report of judgedPots(pot)) {
      const rows = ownRows(pot, report).map(asInCells);
      const [word, explained] = diagnosed(pot, rows);
      const { verdict, course } = judge(inTime(rows), bandOf(pot));
      expect(word).toBe(verdict);
      for (const { says } of course) expect(explained).toContain(says.split(". ")[0]);
    }
  });

  const told = each.filter(([, pot]) => {
    const rows = readCase(pot).rows;
    return rows.every((row) => JSON.stringify(row) === JSON.stringify(asInCells(row)));
  });
  it.each(told)("%s: DIAGNOSE gives the verdict of pane and command line", (_, pot) => {
    for (const report of judgedPots(pot))
      expect(diagnosed(pot, ownRows(pot, report))[0]).toBe(report.judgement.verdict);
  });

  const benches = each.filter(([, pot]) => judgedPots(pot).length > 1);
  it.each(benches)("%s: WHICHFIRST lists the report's pots in its order", (_, pot) => {
    const { rows } = readCase(pot);
    const series = (["vessel", "day", ...measured] as const).map((field) => column(rows, field));
    const more = others.map((field) => column(rows, field));
    const [, ...table] = host.call("WHICHFIRST", [...series, bandCells(pot), ...more], "empty");
    const wanted = judgedPots(pot).map(({ vessel, judgement: { verdict, urgency, course } }) =>
      [vessel, verdict, urgency, course[0].act]);
    expect(table.map((row) => row.slice(0, 4))).toEqual(wanted);
  });

  it.each(each.filter(([, pot]) => isDrain(pot)))("%s: the pane shows the report's judgement", (_, pot) => {
    const { grid } = caseGrid(pot);
    const { rowNumbers, columnNumbers } = grid;
    const selection = {
      sheetId: "1", sheetName: "Log", grid, rowNumbers, columnNumbers, hiddenRows: 0, hiddenColumns: [], waiting: 0,
      headerRows: 0, tableName: undefined, wholeLog: true,
    };
    const { medium, feeder = "medium" } = bandOf(pot);
    const choices = forPot(noChoices, undefined, { medium, feeder });
    const { judgement } = rootZoneOf(selection, { ...noChoices, ...choices });
    expect(judgement).toEqual(reportOf({ grid, band: bandOf(pot) }).judgement);
  });

  it.each(each)("%s: the command line prints the report's judgement", (_, pot) => {
    const placed = caseGrid(pot);
    const report = reportOf({ grid: placed.grid, band: bandOf(pot) });
    const printed = JSON.parse(JSON.stringify(foundIn({ file: "log.csv", placed, report, others: [] }))) as Printed;
    const { verdict, urgency, causes, reasons, course } = report.judgement ?? {};
    expect(printed).toMatchObject({ verdict, urgency, causes, reasons });
    expect(printed.course.map(({ says }) => says)).toEqual(course?.map(({ says }) => says));
  });
});
