import { type ModuleFacts } from "./module-facts";

/** The order inside src, from the ground up: a part imports from lower levels and from itself, never from a neighbour. */
export const levels: readonly (readonly string[])[] = [
  ["refusal"],
  ["quantities"],
  ["judgement"],
  ["maths"],
  ["readings"],
  ["cells"],
  ["bands", "environment", "mix", "log"],
  ["flush"],
  ["diagnosis"],
  ["recovery"],
  ["report"],
  ["index"],
];

/** Which modules each zone may import, besides its own; the first zone that fits a module holds. */
const zones: readonly { readonly zone: string; readonly may: RegExp }[] = [
  { zone: "src/", may: /^src\// },
  { zone: "functions/", may: /^(functions\/|src\/index$)/ },
  { zone: "taskpane/drawing/", may: /^(taskpane\/drawing\/|src\/index$|d3-)/ },
  { zone: "taskpane/templates/", may: /^(taskpane\/templates\/|src\/index$)/ },
  { zone: "taskpane/", may: /^(taskpane\/|src\/index$)/ },
  // The samples' readings come from a balance of their own, so that the engine is shown something it did not make itself.
  { zone: "sample-workbooks/scenario/", may: /^sample-workbooks\/scenario\// },
  // Of the pane they know the sheets that it describes, and nothing that touches the host or the page.
  { zone: "sample-workbooks/", may: /^(?!functions\/|tests\/|taskpane\/(?!templates\/))/ },
  { zone: "workbench/", may: /^(?!functions\/|tests\/|tools\/|sample-workbooks\/)/ },
];

const mayImportWorkbench = /^(workbench|tests|tools|sample-workbooks)\//;

/** The clock, chance and the machine's language: with them the same log would not give the same answer everywhere. */
const impure = /^(Date\.now|new Date\(\)|Math\.random|Intl|\.toLocale\w*|console|process|performance|globalThis)$/;
/** Descriptions without host, page or clock, so that what is not the pane can read them too. */
const pureInPane = /^taskpane\/(drawing|templates)\//;
const pageOrHost = /^(document|window|navigator|Office|Excel|OfficeExtension|CustomFunctions)$/;

const partOf = (name: string): string => name.split("/")[1] ?? "";
const levelOf = (name: string): number => levels.findIndex((level) => level.includes(partOf(name)));

/** Every breach of the import rules, as a sentence; an empty list when the house is in order. */
export function importProblems(modules: readonly ModuleFacts[]): string[] {
  return [...modules.flatMap((module) => [...zoneProblems(module), ...orderProblems(module), ...useProblems(module)]), ...cycles(modules)];
}

function zoneProblems({ name, imports }: ModuleFacts): string[] {
  const zone = zones.find((each) => name.startsWith(each.zone));
  const outside = imports.filter((each) => zone !== undefined && !zone.may.test(each));
  const workbench = mayImportWorkbench.test(name) ? [] : imports.filter((each) => each.startsWith("workbench/"));
  return [...outside, ...workbench].map((each) => `${name} must not import ${each}`);
}

function orderProblems({ name, imports }: ModuleFacts): string[] {
  if (!name.startsWith("src/")) return [];
  if (levelOf(name) < 0) return [`${name} has no place in the order of src`];
  const inside = imports.filter((each) => each.startsWith("src/"));
  const wrong = inside.filter((each) => partOf(each) !== partOf(name) && levelOf(each) >= levelOf(name));
  return wrong.map((each) => `${name} must not import ${each}, which stands beside or above it`);
}

function useProblems({ name, looseExports, uses }: ModuleFacts): string[] {
  const used = [...uses];
  const problems = /^(src|functions|taskpane|workbench)\//.test(name) ? looseExports.map((each) => `has ${each}`) : [];
  if (name.startsWith("src/") || pureInPane.test(name)) {
    problems.push(...used.filter((each) => impure.test(each)).map((each) => `uses ${each}`));
  }
  if (pureInPane.test(name)) problems.push(...used.filter((each) => pageOrHost.test(each)).map((each) => `touches ${each}`));
  if (uses.has("Excel.run") && /^(src|functions|taskpane)\//.test(name) && name !== "taskpane/workbook") problems.push("calls Excel.run");
  return problems.map((problem) => `${name} ${problem}`);
}

/**
 * Each ring of imports once, as the path that leads back to its start, in what ships. The host whose objects the workbench
 * stands in for is itself a ring: a sheet has tables, a table has a range, a range has a sheet.
 */
function cycles(modules: readonly ModuleFacts[]): string[] {
  const shipped = modules.filter(({ name }) => /^(src|functions|taskpane)\//.test(name));
  const imports = new Map(shipped.map((module) => [module.name, module.imports]));
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (name: string, trail: readonly string[]): void => {
    const at = trail.indexOf(name);
    if (at >= 0) found.push(`cycle: ${[...trail.slice(at), name].join(" -> ")}`);
    if (at >= 0 || done.has(name)) return;
    for (const each of imports.get(name) ?? []) visit(each, [...trail, name]);
    done.add(name);
  };
  for (const name of imports.keys()) visit(name, []);
  return found;
}
