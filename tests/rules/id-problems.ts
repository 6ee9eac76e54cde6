import * as formulas from "@univerjs/engine-formula";

/** The host's own functions, from the tables of a spreadsheet engine, and the newest that it does not have yet. */
const builtIn = new Set<string>([
  ...Object.entries(formulas).flatMap(([name, names]) => (name.startsWith("FUNCTION_NAMES_") ? Object.values(names as Record<string, string>) : [])),
  ...["GROUPBY", "PIVOTBY", "PERCENTOF", "TRIMRANGE", "REGEXTEST", "REGEXEXTRACT", "REGEXREPLACE", "TRANSLATE", "DETECTLANGUAGE", "COPILOT"],
]);

const lastColumn = "XFD";
const lastRow = 1_048_576;

/** What would keep a formula with this id from working, or from going on working in saved workbooks. */
export function idProblems(id: string): string[] {
  const problems: string[] = [];
  if (!/^[A-Z]+\d*$/.test(id)) problems.push("is not A to Z with digits only at the end");
  if (id.replaceAll(/[^A-Z]/gi, "").length < 3) problems.push("has fewer than three letters");
  if (isCellAddress(id)) problems.push("looks like a cell address");
  if (/^(R\d*C\d*|R\d*|C\d*)$/i.test(id)) problems.push("looks like a cell address of the R1C1 style");
  if (builtIn.has(id)) problems.push("is the name of a built-in function");
  return problems;
}

function isCellAddress(id: string): boolean {
  const [, column, row] = /^([A-Z]{1,3})(\d+)$/i.exec(id) ?? [];
  if (column === undefined || row === undefined) return false;
  const inSheet = column.length < lastColumn.length || column.toUpperCase() <= lastColumn;
  return inSheet && Number(row) >= 1 && Number(row) <= lastRow;
}
