import { type FunctionMetadata } from "../../workbench/host/functions-host";
import { type DocTags } from "./tags";

/** The parts of the product by the question each answers: file under functions/, heading in the documentation. */
export const parts = [
  { part: "log", question: "Log: what a cell of it says" },
  { part: "readings", question: "Readings: on which scale are they" },
  { part: "meters", question: "Meters: can I trust them" },
  { part: "diagnosis", question: "Diagnosis: salt, pH, both, neither" },
  { part: "bands", question: "Bands: is a reading where it should be" },
  { part: "drift", question: "Drift: how do I keep it from coming back" },
  { part: "flush", question: "Flush: how much, when to stop" },
  { part: "doses", question: "Doses: acid and alkali for the water" },
  { part: "mix", question: "Mix: weaken, strengthen, blend" },
  { part: "feed", question: "Feed: what to feed next" },
  { part: "recovery", question: "Recovery: is it working" },
  { part: "environment", question: "Environment: air and light" },
] as const;

export interface DocumentedPart {
  readonly question: string;
  readonly functions: readonly (FunctionMetadata & DocTags)[];
}

const introduction = `# Worksheet functions

Every function by the question it answers: what it takes, what it answers, what it refuses, with examples.

Back to the [README](../README.md). This page is made from the code by \`npm run docs\`, and its examples are run by the tests.

- Type \`=RUNOFF.\` in a cell and the name of a function. An Excel with a decimal comma takes \`;\` between arguments. EC is in mS/cm at 25 C, temperature in C, volume in litres, unless said otherwise; ppm is mg/L.
- \`cell or range\`: a range answers in its own shape, and a single cell stretches along it. \`series\`: a column or a row of readings in order, one answer.
- Blank in, blank out. For EC, pH and temperature a 0 counts as not measured, because some versions of the host hand a blank cell over as 0. A volume, a day number and the EC of water may be 0: pure water, and so is a blank that arrives as 0.
- What cannot be answered is refused: \`#VALUE!\` with its reason where an input is wrong, \`#N/A\` where no answer can exist. Some desktop versions hide the reason.
- Where a function has \`explain\`, TRUE adds the reasons in the cell to the right.
- \`band\` is a text, \`medium\` or \`medium, feeder\` ("coir, heavy"), or four cells: pH low, pH high, runoff EC low, runoff EC high. Your own limits always win.
`;

/** docs/functions.md: every function that the build holds, grouped by the question it answers. */
export function functionsPage(documented: readonly DocumentedPart[]): string {
  const filled = documented.filter(({ functions }) => functions.length > 0);
  const sections = filled.map(({ question, functions }) => `## ${question}\n\n${functions.map(section).join("\n")}`);
  return `${introduction}\n${filled.map(contents).join("\n")}\n\n${sections.join("\n")}`;
}

const contents = ({ question, functions }: DocumentedPart): string =>
  `- ${question}: ${functions.map(({ id }) => `[${id}](#${id.toLowerCase()})`).join(", ")}`;

function section(fn: FunctionMetadata & DocTags): string {
  const rows = fn.parameters.map(({ name, description, optional }) => `| \`${name}\`${optional === true ? ", optional" : ""} | ${cell(description)} |`);
  const blocks = [
    `### ${fn.id}`,
    fn.description,
    `\`${signature(fn)}\``,
    ["| argument | unit and meaning |", "|---|---|", ...rows].join("\n"),
    `Answers: ${fn.returns}`,
    ...fn.remarks,
    fn.examples.length === 0 ? "" : ["```", ...fn.examples, "```"].join("\n"),
    fn.see.length === 0 ? "" : `Source: ${fn.see.map(linked).join("; ")}`,
  ];
  return blocks.filter((block) => block !== "").join("\n\n") + "\n";
}

/** A vertical bar would end the table's cell. */
const cell = (text: string): string => text.replaceAll("|", "\\|");

function signature({ id, parameters }: FunctionMetadata): string {
  const names = parameters.map(({ name, optional }) => (optional === true ? `[${name}]` : name));
  return `=RUNOFF.${id}(${names.join(", ")})`;
}

/** `[key]` becomes a link to its line among the sources. */
const linked = (text: string): string => text.replaceAll(/\[([\w.-]+)\]/g, "[[$1]](sources.md#$1)");
