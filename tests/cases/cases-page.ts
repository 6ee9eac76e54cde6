import { type CourseStep, type PotJudgement, type PotStanding, stepHeading } from "../../src/index";
import { type CaseTheme, type PotCase } from "./case-book";
import { caseCells } from "./case-log";
import { cropFigures } from "./crop-figures";
import { judgedPots } from "./judged";
import { type OpenCrops } from "./open-crops";

/** As code hosts make the anchor of a heading. */
const anchorOf = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9 _-]/g, "").replaceAll(" ", "-");
const escaped = (text: string): string => text.replaceAll(/[|<>]/g, (sign) => `\\${sign}`);

function table(rows: readonly (readonly string[])[]): string[] {
  const [header = [], ...body] = rows;
  const line = (cells: readonly string[]): string =>
    `| ${header.map((_, column) => escaped(cells[column] ?? "")).join(" | ")} |`;
  return [line(header), `|${header.map(() => "---").join("|")}|`, ...body.map(line)];
}

const step = (each: CourseStep, place: number): string =>
  `${place + 1}. **${stepHeading(each)}**: ${escaped(each.says)}`;

function judgementLines({ verdict, urgency, phase, causes, course, reasons }: PotJudgement): string[] {
  const because = causes.length === 0 ? [] : [`Why, as far as the readings tell: ${causes.join("; ")}.`];
  return [
    `**${verdict}**, urgency: ${urgency}, phase: ${phase}. ${because.join("")}`.trim(), "",
    ...course.map(step), "", ...reasons.map((reason) => `- ${escaped(reason)}`),
  ];
}

function benchLines(pots: readonly PotStanding[]): string[] {
  if (pots.length < 2) return [];
  const rows = pots.map(({ vessel = "", judgement: { verdict, urgency, course } }) =>
    [vessel, verdict, urgency, course[0].act]);
  const bench = table([["pot", "verdict", "urgency", "first"], ...rows]);
  return ["The bench, worst first:", "", ...bench, "", "Of the first:", ""];
}

function caseLines(pot: PotCase): string[] {
  const pots = judgedPots(pot);
  const [worst] = pots;
  const [ph, ec] = [pot.limits?.slice(0, 2), pot.limits?.slice(2)].map((pair) => pair?.join(" to "));
  const limits = pot.band ?? `own limits: pH ${ph ?? ""}, EC ${ec ?? ""}`;
  return [
    `### ${pot.title}`, "", `Held against: ${limits}`, "", ...table(caseCells(pot)), "",
    ...benchLines(pots), ...(worst === undefined ? [] : judgementLines(worst.judgement)), "",
    `*Why an adviser would say so:* ${pot.why}`, "", `*Source:* ${pot.source}.`, "",
  ];
}

const ofDays = (found: number, days: number): string => `${found} (${Math.round((100 * found) / days)} %)`;

/** What the limits of the bands and the rules say of crops that professionals ran, day by day. */
function cropLines({ about, source, crops }: OpenCrops): string[] {
  const header = ["crop", "days", "told to flush", "called salty", "pH called out of range", "build-up named"];
  const rows = crops.map(cropFigures).map((found) => [
    found.name, `${found.days}`, ofDays(found.toldToFlush, found.days), ofDays(found.flaggedForSalt, found.days),
    ofDays(found.flaggedForPh, found.days), found.buildupDays === 0 ? "" : `on ${found.buildupNamed} of ${found.buildupDays} days`,
  ]);
  return [
    `## ${openCropsTitle}`, "", `${about}. Each day is judged by what had been read by then; \`npm run crops\` prints every verdict.`,
    "The cucumber's drain did stand at pH 3.8 to 4.6 for 18 days, and at 6.8 to 7.0 for a week: such days are called out",
    "of range whatever the feeder, for nothing in the data says that these growers were content with them.", "",
    ...table([header, ...rows]), "", `*Source:* ${source}.`, "",
  ];
}

const openCropsTitle = "Professionally run crops, day by day";

/** docs/cases.md: the case book as a grower reads it, with what the program says today. */
export function casesPage(themes: readonly CaseTheme[], crops: OpenCrops): string {
  const count = themes.reduce((sum, { cases }) => sum + cases.length, 0);
  const link = ({ title }: PotCase): string => `  - [${title}](#${anchorOf(title)})`;
  return [
    "# Cases", "",
    `${count} pots and benches: the log as its grower kept it, what is said of it and what to do, why, and where the`,
    "case is from. What an adviser would say was written first, before the rules, in `tests/cases/`, and a test holds",
    "the rules to it. This page is made from the same files by `npm run cases`. Before a flush, an acid, a base or a",
    "concentrate, read the cautions in the [README](../README.md).", "",
    ...themes.flatMap(({ about, cases }) => [`- [${about}](#${anchorOf(about)})`, ...cases.map(link)]),
    `- [${openCropsTitle}](#${anchorOf(openCropsTitle)})`, "",
    ...themes.flatMap(({ about, cases }) => [`## ${about}`, "", ...cases.flatMap(caseLines)]),
    ...cropLines(crops),
  ].join("\n");
}
