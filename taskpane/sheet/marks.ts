/** Stands in each rule of ours, where it changes nothing, so that they are found again and others left alone. */
const signature = 'N("Runoff Ledger")=0';

/**
 * A rule on the text in the flag column (the host takes none of our functions here) and a look that is told without
 * colour.
 */
const rules = [
  {
    words: "check reading",
    says: 'ISNUMBER(SEARCH("check reading",FLAG))',
    italic: true,
    bold: false,
    line: "Dash",
    fill: "#E9E6F2",
    color: "#3A2F5B",
  },
  {
    words: "in band",
    says: 'AND(FLAG<>"",FLAG<>"in band")',
    italic: false,
    bold: true,
    line: "Continuous",
    fill: "#F8E7CF",
    color: "#4F2E00",
  },
] as const;

/** The formulas of the rules, in their order, on the first cell of the flag column. */
export const formulasOn = (flag: string): string[] =>
  rules.map(({ says }) => `=AND(${signature},ISTEXT(${flag}),${says.replaceAll("FLAG", flag)})`);

/** A place that is marked, with the formulas of its rules in the order of `rules`. */
export interface Marks {
  readonly address: string;
  readonly formulas: readonly string[];
}

/** One rule of ours that stands on the sheet. */
export interface StandingRule {
  readonly format: Excel.ConditionalFormat;
  readonly formula: string;
  readonly address: string;
}

/** A rule that says nothing is one of ours that was added and not written to its end. */
const isOurRule = (formula: string): boolean => formula.includes(signature) || formula === "";

/** The rules of ours on a sheet. */
export async function ourMarks(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<StandingRule[]> {
  const formats = sheet.getRange().conditionalFormats.load("items/type");
  await context.sync();
  const custom = formats.items
    .filter(({ type }) => type === "Custom")
    .map((format) => ({ format, range: format.getRange().load("address") }));
  for (const { format } of custom) format.custom.rule.load("formula");
  await context.sync();
  return custom
    .map(({ format, range }) => ({
      format,
      formula: format.custom.rule.formula,
      address: range.address.replace(/^.*!/, ""),
    }))
    .filter(({ formula }) => isOurRule(formula));
}

/** The rules that stand, by place, in the order of `rules`. */
export function marksOf(standing: readonly StandingRule[]): Marks[] {
  const places = [...new Set(standing.map(({ address }) => address))];
  return places.map((address) => ({
    address,
    formulas: standing.filter((each) => each.address === address && each.formula !== "").map(({ formula }) => formula),
  }));
}

/** The host puts a new rule before the others, so that the first is added last; each stops the next. */
export function addMarks(sheet: Excel.Worksheet, { address, formulas }: Marks): void {
  const range = sheet.getRange(address);
  for (const formula of [...formulas].reverse()) {
    const rule = rules.find(({ words }) => formula.includes(words)) ?? rules[1];
    addRule(range, rule, formula);
  }
}

function addRule(
  range: Excel.Range,
  { italic, bold, line, fill, color }: (typeof rules)[number],
  formula: string,
): void {
  const added = range.conditionalFormats.add("Custom");
  const { custom } = added;
  custom.rule.formula = formula;
  const { format } = custom;
  format.fill.color = fill;
  format.font.color = color;
  format.font.bold = bold;
  format.font.italic = italic;
  for (const edge of ["EdgeTop", "EdgeBottom"] as const) {
    format.borders.getItem(edge).style = line;
    format.borders.getItem(edge).color = color;
  }
  added.priority = 0;
  added.stopIfTrue = true;
}
