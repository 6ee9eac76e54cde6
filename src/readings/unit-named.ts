import { Refusal } from "../refusal";

/** Lower case without blanks, dots and the word "as"; either micro sign is a u, and small figures are figures. */
const tidy = (text: string): string =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .replaceAll(/\bas\b/g, "")
    .replaceAll(/[\s.]+/g, "")
    .replaceAll("\u03BC", "u")
    .replace(/^ppm/, "mg/l");

/**
 * The unit that a text names, however it is written.
 *
 * @param table the units with what makes one of them; its keys are the choices
 * @param spellings other words for them, tidied: lower case, no blanks, micro as u
 * @param called the quantity in words, for a refusal
 * @throws {Refusal} `unknown-choice`, listing the units
 */
export function unitNamed<Unit extends string>(
  text: string,
  {
    table,
    spellings,
    called,
  }: { table: Readonly<Record<Unit, number>>; spellings: ReadonlyMap<string, Unit>; called: string },
): Unit {
  const word = tidy(text);
  const names = Object.keys(table) as Unit[];
  const found = names.find((name) => tidy(name) === word) ?? spellings.get(word);
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: called, given: text, allowed: names.join(", ") });
}
