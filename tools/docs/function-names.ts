/** No line of the code is longer. */
const longestLine = 110;

/** taskpane/formulas/function-names.ts: the ids of the build, for the pane, which may not look into functions/. */
export function functionNamesFile(ids: readonly string[]): string {
  const lines: string[] = [];
  for (const id of [...ids].sort()) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + id.length < longestLine) lines[lines.length - 1] = `${last} "${id}",`;
    else lines.push(`  "${id}",`);
  }
  return [
    "/** Every worksheet function of the add-in, to know one that has lost its prefix. Made by `npm run docs`. */",
    "export const functionNames = [",
    ...lines,
    "] as const;",
    "",
  ].join("\n");
}
