import { functionNames } from "./function-names";

/** Text in quotes stays as it is; what lies between is changed. */
const outsideQuotes = (formula: string, change: (code: string) => string): string =>
  formula.replace(/"(?:[^"]|"")*"|[^"]+/g, (part) => (part.startsWith('"') ? part : change(part)));

/**
 * What stands before one of our names when the host has lost the add-in: its file form, another file, an @, an
 * underscore.
 */
const foreign = new RegExp(
  String.raw`(?:_xldudf_RUNOFF_|(?:'[^']*'|\[[^\]]*\]|[\w.]+)!(?:_xldudf_)?RUNOFF[._]|@RUNOFF\.)(?=[A-Z]+\d*\()`,
  "gi",
);

const bare = new RegExp(String.raw`(?<![\w.$!])(?:${functionNames.join("|")})(?=\()`, "gi");

/** Whether a formula calls one of our functions, in whatever form. */
export const isOurs = (formula: unknown): formula is string =>
  typeof formula === "string" &&
  formula.startsWith("=") &&
  /RUNOFF[._][A-Z]+\d*\(/i.test(formula.replace(/"(?:[^"]|"")*"/g, ""));

/**
 * A formula that the host cannot read, as it should be entered; `undefined` when there is nothing to mend. A formula in
 * the right form that shows #NAME? is mended by entering it once more.
 */
export function repaired(formula: unknown, shows: unknown): string | undefined {
  if (typeof formula !== "string" || !formula.startsWith("=")) return undefined;
  const isLost = shows === "#NAME?";
  const prefixed = outsideQuotes(formula, (code) =>
    code.replace(foreign, (found) => (found.startsWith("@") && !isLost ? found : "RUNOFF.")),
  );
  const mended = isLost
    ? outsideQuotes(prefixed, (code) => code.replace(bare, (name) => `RUNOFF.${name.toUpperCase()}`))
    : prefixed;
  if (mended !== formula) return mended;
  return isLost && isOurs(formula) ? formula : undefined;
}
