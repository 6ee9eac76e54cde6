import { logVerdict, readLog, timeline } from "../src/index";
import { drawTimeline } from "../taskpane/drawing/timeline-drawing";
import { FileProblem, messageOf } from "./files/file-problem";
import { readBook } from "./files/read-book";
import { writeWhole } from "./files/write-whole";
import { logGrid } from "./timeline/log-grid";
import { asJson, asText, type TimelineFindings, unanswered } from "./timeline/report";
import { timelineRequest, type TimelineRequest, TimelineUsage } from "./timeline/request";

const exitCodes = { failed: 1, notUsable: 2 } as const;

/** Pixels: the width at which the pane places its picture on a sheet. */
const pictureWidth = 640;

/** `npm run timeline`: reads a log, weighs it and draws it as the pane does, without a sheet. */
async function run(request: TimelineRequest): Promise<void> {
  const findings = await findingsOf(request);
  if (request.json) process.stdout.write(asJson(findings));
  if (findings.reading.questions.length > 0) {
    process.stderr.write(`${unanswered(findings)}\n`);
    process.exitCode = exitCodes.notUsable;
    return;
  }
  if (!request.json) process.stdout.write(asText(findings));
  if (request.svg !== undefined) await writeWhole(request.svg, new TextEncoder().encode(pictureOf(findings)));
}

async function findingsOf({ file, sheet, range, vessel, band, columns, answers }: TimelineRequest): Promise<TimelineFindings> {
  const placed = logGrid(await readBook(file), sheet, range);
  const bare = readLog(placed.grid);
  const answered = bare.columns.flatMap(({ column, letters }) => {
    const quantity = columns.get(letters);
    return quantity === undefined ? [] : [[column, { quantity }] as const];
  });
  const headerRow = answers.headerRow === undefined || answers.headerRow < 0 ? answers.headerRow : placed.grid.rowNumbers.indexOf(answers.headerRow);
  const given = { ...answers, ...(headerRow === undefined ? {} : { headerRow }) };
  const reading = readLog(placed.grid, answered.length === 0 ? given : { ...given, columns: Object.fromEntries(answered) });
  if (vessel !== undefined && !reading.vessels.includes(vessel)) {
    throw new FileProblem(`there is no vessel ${vessel}; there is ${reading.vessels.join(", ") || "no vessel column"}`);
  }
  const shown = vessel ?? (reading.vessels.length === 0 ? undefined : (reading.rows.at(-1)?.vessel ?? reading.vessels[0]));
  const verdict = band === undefined ? undefined : logVerdict(reading.rows, band, shown);
  return { placed, reading, vessel: shown, verdict, timeline: timeline(reading.rows, { band, vessel: shown }) };
}

function pictureOf({ placed, vessel, timeline: model }: TimelineFindings): string {
  const title = `Recovery timeline: ${placed.sheet}${vessel === undefined ? "" : `, ${vessel}`}`;
  return `${drawTimeline(model, { width: pictureWidth, theme: "light", title }).svg}\n`;
}

try {
  await run(timelineRequest(process.argv.slice(2), process.env["INIT_CWD"] ?? process.cwd()));
} catch (problem) {
  const isExpected = problem instanceof FileProblem || problem instanceof TimelineUsage;
  process.stderr.write(`timeline: ${messageOf(problem)}\n`);
  process.exitCode = isExpected ? exitCodes.notUsable : exitCodes.failed;
}
