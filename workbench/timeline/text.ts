import { type CourseStep, type LogReading, type Report, rowsUsed, saidOfRows, stepHeading, waitingIn } from "../../src/index";
import { dayInWords } from "../../taskpane/drawing/time-axis";
import { addressesIn, type BookFindings, type Findings } from "./findings";

type Question = LogReading["questions"][number];

/** So many lines of rows set aside are listed. */
const mostListed = 20;

/** The findings as lines for a person at a terminal. */
export function asText({ placed, report, others }: BookFindings): string {
  const { reading, vessel, timeline } = report;
  const address = addressesIn(placed);
  const columns = reading.columns
    .filter(({ quantity, bySide }) => quantity !== "other" || bySide !== undefined)
    .map(({ letters, header, quantity, bySide, unit, read }) => {
      const holds = bySide === undefined ? quantity : `${bySide.input} and ${bySide.runoff} in turn`;
      return `  ${letters} "${header}": ${holds}${unit ? `, ${unit}` : ""}${read ? "" : " (not read)"}`;
    });
  const unread = reading.columns
    .filter(({ quantity, bySide, header }) => quantity === "other" && bySide === undefined && header !== "")
    .map(({ letters, header, why }) => `  ${letters} "${header}": not read${why === "" ? "" : `: ${why}`}`);
  const said = saidOfRows({ setAside: reading.setAside, problems: [] });
  const aside = said.slice(0, mostListed).map(({ row, column, rows, reason }) => {
    const alike = rows.length === 1 ? "" : `, and ${rows.length - 1} rows like it`;
    return `  ${address.cell(row, column)}: ${reason}${alike}`;
  });
  const more = said.length > mostListed ? [`  and ${said.length - mostListed} more`] : [];
  const lanes = timeline.lanes.map(
    ({ name, unit, trend }) => `  ${name}${unit === "" ? "" : `, ${unit}`}: ${trend.words}`,
  );
  const events = timeline.events.map(
    ({ kind, words, day }) => `  ${timeline.axis === "dates" ? `${dayInWords(day)}: ` : ""}${kind} (${words})`,
  );
  const shown = vessel === undefined ? "" : `; shown: ${vessel} of ${reading.vessels.join(", ")}`;
  return [
    `${placed.sheet}: ${rowsUsed(reading)} rows used, ${reading.setAside.length} set aside, ${reading.blankRows} blank${shown}`,
    ...otherLogs(others),
    ...reading.remarks,
    ...waitingIn(reading),
    "Columns",
    ...columns,
    ...unread,
    ...(aside.length > 0 ? ["Set aside", ...aside, ...more] : []),
    ...standing(report),
    "Lanes",
    ...lanes,
    ...(events.length > 0 ? ["Events", ...events] : []),
    "",
  ].join("\n");
}

function otherLogs(others: readonly Findings[]): string[] {
  if (others.length === 0) return [];
  const named = others.map(({ placed: { sheet }, report: { pots } }) => {
    const worst = pots[0]?.judgement;
    return worst === undefined ? sheet : `${sheet} (${worst.verdict}${worst.urgency === "none" ? "" : `, ${worst.urgency}`})`;
  });
  return [`Other logs in this book: ${named.join(", ")}. Name one with --sheet to see it.`];
}

/** The judgement in the order in which a person needs it: where it stands, what to do, why. */
function standing({ judgement, pots }: Report): string[] {
  if (judgement === undefined)
    return ["Where things stand: name the medium (--medium coir) or limits (--band) to have it judged"];
  const { verdict, urgency, phase, causes, course, reasons } = judgement;
  const others =
    pots.length < 2
      ? []
      : [
          "Pots, worst first",
          ...pots.map(({ vessel, judgement: pot }) => `  ${vessel ?? ""}: ${pot.verdict} (${pot.urgency})`),
        ];
  return [
    ...others,
    `Where things stand: ${verdict}${urgency === "none" ? "" : ` (${urgency})`}${phase === "quiet" ? "" : `, ${phase}`}`,
    ...(causes.length === 0 ? [] : [`Why: ${causes.join("; ")}`]),
    "What to do, in this order",
    ...course.map((each, at) => `  ${at + 1}. ${stepText(each)}`),
    "It rests on",
    ...reasons.map((reason) => `  - ${reason}`),
  ];
}

const stepText = (step: CourseStep): string =>
  `${stepHeading(step)}${step.at === undefined ? "" : ` (${dayInWords(step.at)})`}: ${step.says}`;

/** What the log's keeper is asked, and with which option to answer. */
export function unanswered({ report: { reading } }: Findings): string {
  const option: Record<Exclude<Question["kind"], "what is this column">, string> = {
    "ppm scale": "--ppm-scale 500",
    "EC unit": "--ec-unit uS/cm",
    "volume unit": "--volume-unit gal",
    "temperature unit": "--temperature-unit F",
    "date order": '--date-order "day first"',
    "which row is the header": "--header-row 3",
    layout: "in the sheet itself",
  };
  const answer = ({ kind, columns: [asked], choices: [choice = "other"] }: Question): string => {
    if (kind !== "what is this column") return option[kind];
    return `--column "${reading.columns.find(({ column }) => column === asked)?.letters ?? ""}=${choice}"`;
  };
  return reading.questions.map((question) => `${question.text} Answer with ${answer(question)}`).join("\n");
}
