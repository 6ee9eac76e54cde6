import { readLog, reportOf } from "../src/index";
import { drawTimeline } from "../taskpane/drawing/timeline-drawing";
import { FileProblem, messageOf } from "./files/file-problem";
import { readBook } from "./files/read-book";
import { writeWhole } from "./files/write-whole";
import { logGrid, logGrids, type PlacedGrid } from "./timeline/log-grid";
import { type BookFindings, type Findings, foundIn } from "./timeline/findings";
import { isTab, shownOf } from "./timeline/shown";
import { asText, unanswered } from "./timeline/text";
import { timelineRequest, type TimelineRequest, TimelineUsage } from "./timeline/request";

const exitCodes = { failed: 1, notUsable: 2 } as const;

/** Pixels: the width at which the pane places its picture on a sheet. */
const pictureWidth = 640;

/**
 * `npm run timeline`: reads logs, weighs them and draws one as the pane does, without a sheet. Questions are told; only
 * one that the verdict waits for keeps it back.
 */
async function run(request: TimelineRequest): Promise<void> {
  const { files, json, svg } = request;
  const said: object[] = [];
  for (const file of files) {
    const findings = await findingsOf(file, request);
    if (json) said.push(foundIn(findings));
    const isOpen = findings.report.waitsFor.length > 0;
    if (findings.report.reading.questions.length > 0) process.stderr.write(`${unanswered(findings)}\n`);
    if (isOpen) process.exitCode = exitCodes.notUsable;
    if (!isOpen && !json) process.stdout.write(asText(findings));
    if (!isOpen && svg !== undefined) await writeWhole(svg, new TextEncoder().encode(pictureOf(findings)));
  }
  if (json) process.stdout.write(`${JSON.stringify(said.length === 1 ? said[0] : said, null, 2)}\n`);
}

/** The log asked for, or of a book's logs the one to be shown, and the others. */
async function findingsOf(file: string, request: TimelineRequest): Promise<BookFindings> {
  const { sheet, range, vessel } = request;
  const book = await readBook(file);
  const logs = sheet === undefined && range === undefined ? logGrids(book) : [logGrid(book, sheet, range)];
  const [only] = logs;
  if (logs.length === 1 && only !== undefined) return { ...findingsOn(file, only, request), others: [] };
  const found = logs.map((placed) => findingsOn(file, placed, { ...request, vessel: undefined }));
  const shown = shownOf(found, vessel);
  const others = found.filter((each) => each !== shown);
  return { ...(isTab(shown, vessel) ? shown : findingsOn(file, shown.placed, request)), others };
}

function findingsOn(file: string, placed: PlacedGrid, { vessel, band, container, columns, answers }: TimelineRequest): Findings {
  const bare = readLog(placed.grid);
  const answered = bare.columns.flatMap(({ column, letters }) => {
    const quantity = columns.get(letters);
    return quantity === undefined ? [] : [[column, { quantity }] as const];
  });
  const headerRow = answers.headerRow === undefined || answers.headerRow < 0 ? answers.headerRow : placed.grid.rowNumbers.indexOf(answers.headerRow);
  const given = { ...answers, ...(headerRow === undefined ? {} : { headerRow }) };
  const all = answered.length === 0 ? given : { ...given, columns: Object.fromEntries(answered) };
  const reading = Object.keys(all).length === 0 ? bare : readLog(placed.grid, all);
  if (vessel !== undefined && !reading.vessels.includes(vessel)) {
    throw new FileProblem(`there is no vessel ${vessel}; there is ${reading.vessels.join(", ") || "no vessel column"}`);
  }
  const containerOf = (): typeof container => container;
  return { file, placed, report: reportOf({ grid: placed.grid, reading, band, containerOf, vessel, sheetName: placed.sheet }) };
}

function pictureOf({ report: { timeline, title } }: Findings): string {
  return `${drawTimeline(timeline, { width: pictureWidth, theme: "light", title }).svg}\n`;
}

try {
  await run(timelineRequest(process.argv.slice(2), process.env["INIT_CWD"] ?? process.cwd()));
} catch (problem) {
  const isExpected = problem instanceof FileProblem || problem instanceof TimelineUsage;
  process.stderr.write(`timeline: ${messageOf(problem)}\n`);
  process.exitCode = isExpected ? exitCodes.notUsable : exitCodes.failed;
}
