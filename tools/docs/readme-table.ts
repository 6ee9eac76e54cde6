import { type DocumentedPart } from "./functions-page";

const start = "<!-- functions: made by `npm run docs` -->\n";
const end = "<!-- end of functions -->";

/** The README with its table of functions as the code has them now; the rest of it is left alone. */
export function withFunctionsTable(readme: string, documented: readonly DocumentedPart[]): string {
  const from = readme.indexOf(start);
  const to = readme.indexOf(end);
  if (from < 0 || to < from) throw new Error("README.md has lost the two comments that its table of functions stands between");
  return readme.slice(0, from + start.length) + table(documented) + readme.slice(to);
}

function table(documented: readonly DocumentedPart[]): string {
  const filled = documented.filter(({ functions }) => functions.length > 0);
  const rows = filled.flatMap(({ question, functions }) => [
    `| **${question}** | |`,
    ...functions.map(({ id, description }) => `| [${id}](docs/functions.md#${id.toLowerCase()}) | ${firstSentence(description)} |`),
  ]);
  return ["| function | answers |", "|---|---|", ...rows].join("\n") + "\n";
}

const firstSentence = (text: string): string => (text.split(/\. |\.$/)[0] ?? text).replaceAll("|", "\\|");
