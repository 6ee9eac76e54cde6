import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { DOMParser } from "@xmldom/xmldom";
import { afterAll, describe, expect, it } from "vitest";

const root = path.resolve(import.meta.dirname, "../..");
const folder = mkdtempSync(path.join(tmpdir(), "timeline-"));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

interface Run {
  readonly code: number;
  readonly out: string;
  readonly said: string;
}

const run = (...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    const command = [path.join(root, "tools", "run.js"), "workbench/timeline.ts", ...args];
    execFile(process.execPath, command, { cwd: folder, env: { ...process.env, INIT_CWD: folder } }, (problem, out, said) => {
      resolve({ code: typeof problem?.code === "number" ? problem.code : 0, out, said });
    });
  });

/** A log kept in ppm without a word on the scale, from row 3 on, with a repeated row. */
const csv = [
  "Bench 2,,,,",
  ",,,,",
  "Date,Runoff ppm,Runoff pH,Input pH,Notes",
  ...[1100, 1150, 1200, 1250, 1300, 1350].map((ppm, day) => `2026-03-0${day + 1},${ppm},6.0,5.8,`),
  "2026-03-06,1350,6.0,5.8,",
  "2026-03-07,2300,6.0,5.8,calibrated",
  "2026-03-08,2400,6.1,5.8,tips burnt",
].join("\n");
writeFileSync(path.join(folder, "log.csv"), csv);
const answered = ["log.csv", "--ppm-scale", "500", "--medium", "coir"];

interface Found {
  readonly columns: readonly { address: string; quantity: string; unit: string | null; question?: string }[];
  readonly rowsUsed: number;
  readonly rowsSetAside: readonly { cell: string; reason: string }[];
  readonly verdict: string | null;
  readonly urgency: string;
  readonly phase: string;
  readonly causes: readonly string[];
  readonly course: readonly { act: string; when: string; says: string; date?: string }[];
  readonly restsOn: readonly number[];
  readonly pots: readonly { vessel: string | null; verdict: string; urgency: string; first: string }[];
  readonly reasons: readonly string[];
  readonly lanes: readonly { name: string; trend: string; changePerDay: number | null }[];
  readonly events: readonly { kind: string; date: string; row: number }[];
}

describe("npm run timeline", () => {
  it("asks for the ppm scale that the log does not tell, names the option, and ends with 2", async () => {
    const { code, out, said } = await run("log.csv", "--medium", "coir");
    expect([code, out]).toEqual([2, ""]);
    expect(said).toMatch(/ppm scale.*B "Runoff ppm".*--ppm-scale 500/);
  });

  it("--json prints one object: columns by address, rows counted, the verdict, lanes and events", async () => {
    const { code, out, said } = await run(...answered, "--json");
    expect([code, said]).toEqual([0, ""]);
    const found = JSON.parse(out) as Found;
    expect(found.columns.map(({ address, quantity, unit }) => [address, quantity, unit])).toEqual([
      ["A", "date", ""], ["B", "runoff EC", "ppm 500"], ["C", "runoff pH", ""], ["D", "input pH", ""], ["E", "notes", ""],
    ]);
    expect(found.rowsUsed).toBe(8);
    expect(found.rowsSetAside).toEqual([
      { cell: "A1", reason: "stands above the header" },
      { cell: "A10", reason: "repeats row 9 in every cell" },
    ]);
    // 2300 and 2400 ppm on the 500 scale are 4.6 and 4.8 mS/cm, above coir's 3.5 twice.
    expect(found.verdict).toBe("salt buildup");
    expect(found.reasons[0]).toContain("4.6 mS/cm (2300 ppm), then 4.8 mS/cm (2400 ppm)");
    expect(found.lanes.map(({ name }) => name)).toEqual(["EC", "pH"]);
    expect([found.urgency, found.phase, found.restsOn]).toEqual(["today", "quiet", [11, 12]]);
    expect(found.course.map(({ act }) => act)).toContain("flush");
    expect(found.course.find(({ when }) => when === "24 h after")?.date).toBe("9 Mar 2026");
    expect(found.pots).toEqual([{ vessel: null, verdict: "salt buildup", urgency: "today", first: found.course[0]?.act }]);
    expect(found.events.map(({ kind, row }) => [kind, row])).toEqual([["calibration", 11], ["tip burn", 12]]);
  });

  it("prints the same for a person, without --json", async () => {
    const { code, out } = await run(...answered);
    expect(code).toBe(0);
    expect(out).toContain("Where things stand: salt buildup (today)");
    expect(out).toMatch(/What to do, in this order\n {2}1\. /);
    expect(out).toContain("Keep drain water away from electrical gear");
    expect(out).toContain("A10: repeats row 9 in every cell");
  });

  it("--svg writes the picture once and never over a file that is there", async () => {
    const first = await run(...answered, "--svg", "picture.svg");
    const drawn = readFileSync(path.join(folder, "picture.svg"), "utf8");
    const again = await run(...answered, "--svg", "picture.svg");
    expect([first.code, again.code]).toEqual([0, 2]);
    expect(again.said).toContain("already there");
    expect(new DOMParser().parseFromString(drawn, "image/svg+xml").documentElement?.tagName).toBe("svg");
    expect(readFileSync(path.join(folder, "picture.svg"), "utf8")).toBe(drawn);
  });

  it("--column and --range answer for a part of the sheet", async () => {
    const { out } = await run("log.csv", "--range", "A3:C9", "--column", "B=other", "--json", "--band", "5.5,6.5,1,3");
    const found = JSON.parse(out) as Found;
    expect(found.columns.map(({ address, quantity }) => [address, quantity])).toEqual([["A", "date"], ["B", "other"], ["C", "runoff pH"]]);
    expect(found.rowsUsed).toBe(6);
  });

  it("without a band nothing is judged: verdict null, an empty course, no pots", async () => {
    const found = JSON.parse((await run("log.csv", "--ppm-scale", "500", "--json")).out) as Found;
    expect([found.verdict, found.causes, found.course, found.pots]).toEqual([null, [], [], []]);
  });

  it("an open question leaves the verdict open: null, with the question as its reason, and ends with 2", async () => {
    const { code, out } = await run("log.csv", "--medium", "coir", "--json");
    const found = JSON.parse(out) as Found;
    expect([code, found.verdict]).toEqual([2, null]);
    expect(found.reasons.join()).toContain("ppm scale");
  });

  it("a question that no verdict waits for is told with its own column, and the log is judged all the same", async () => {
    writeFileSync(path.join(folder, "warm.csv"), "Date,Runoff EC (mS/cm),Runoff pH,Temp (F)\n2026-03-01,2.1,6,72\n2026-03-04,2.2,6,71\n");
    const { code, out, said } = await run("warm.csv", "--medium", "coir");
    expect(code).toBe(0);
    expect(said).toMatch(/D "Temp \(F\)".*--column "D=(?:solution|air) temperature"/);
    expect(out).toContain("Column D waits for an answer and is not read yet.");
    expect(out).toContain("Where things stand: in band");
  });

  it("what is not read is named with its reason, so that nobody waits for its word", async () => {
    writeFileSync(path.join(folder, "water.csv"), "Date,Water EC,Feed EC,Runoff EC,Runoff pH\n2026-03-01,0.7,1.8,2.1,6\n2026-03-04,0.7,1.8,2.2,6\n");
    const { code, out } = await run("water.csv", "--medium", "coir");
    expect(code).toBe(0);
    expect(out).toContain('B "Water EC": not read: the water before any feed is in it');
  });

  it("one row of runoff EC 6.2 by pour-through, without dates or inputs, is judged: measured twice before anything", async () => {
    writeFileSync(path.join(folder, "one-row.csv"), "Runoff EC,Runoff pH\n6.2,5.9\n");
    const found = JSON.parse((await run("one-row.csv", "--json", "--band", "peat, medium, pour-through")).out) as Found;
    expect([found.verdict, found.course.map(({ act }) => act).slice(0, 2)]).toEqual(["salt buildup", ["measure again now", "measure again now"]]);
    const options = await run("one-row.csv", "--json", "--medium", "peat", "--feeder", "medium", "--sample", "pour-through");
    expect(JSON.parse(options.out)).toEqual(found);
  });

  it("of several pots the worst is shown, unless one is asked for; two files give one array", async () => {
    const bench = ["Date,Pot,EC in mS/cm,EC drain mS/cm,pH drain", ...[1, 4, 7].flatMap((day) => [`2026-03-0${day},A,2,2.6,6`, `2026-03-0${day},B,2,${3 + day},6`])];
    writeFileSync(path.join(folder, "bench.csv"), bench.join("\n"));
    const worst = JSON.parse((await run("bench.csv", "--json", "--medium", "coir")).out) as Found & { vessel: string };
    expect([worst.vessel, worst.pots.map(({ vessel }) => vessel)]).toEqual(["B", ["B", "A"]]);
    const asked = JSON.parse((await run("bench.csv", "--json", "--medium", "coir", "--pot", "A")).out) as { vessel: string };
    expect(asked.vessel).toBe("A");
    const array = JSON.parse((await run("bench.csv", "one-row.csv", "--json", "--medium", "coir")).out) as Found[];
    expect(array.map(({ pots }) => pots.length)).toEqual([2, 1]);
  });

  it.each([
    ["an unknown medium", [...answered, "--medium", "moon dust"], "coir, peat, bark"],
    ["an unknown option", ["log.csv", "--colour", "red"], "usage: npm run timeline"],
    ["an unknown vessel", [...answered, "--vessel", "T9"], "there is no vessel T9"],
    ["a range that is none", [...answered, "--range", "Z"], "is not a range"],
    ["a file that is not there", ["nothing.csv"], "nothing.csv: there is no such file"],
  ])("%s is refused in one line, with 2", async (_, args, says) => {
    const { code, out, said } = await run(...args);
    expect([code, out]).toEqual([2, ""]);
    expect(said).toContain(says);
    expect(said.trim().split("\n")).toHaveLength(1);
  });
});
