import { plain } from "../../cells/text";

/** Figures that growers write into notes: of the water, which has no column of its own in most logs. */
const figures = {
  alkalinity:
    /\b(\d{2,4}(?:\.\d+)?) ?(?:ppm|mg ?\/ ?l)?(?: as)? caco3\b|\b(?:alk|alkalinity|alkalinitat|alcalinidad|alcalinite|alkaliniteit|caco3)\D{0,12}(\d{1,4}(?:\.\d+)?)/,
  "water EC":
    /\b(?:water(?:s own|s)?(?: alone| itself| only| by itself)?|(?:well|tap)(?: with [a-z ]{1,20}| alone| itself)?) (?:ec|at|of|reads?|is|has)(?: ec)?\D{0,6}(\d(?:\.\d+)?)(?! ?(?:l|liters?|litres?|ml|gal|c|f|degrees)\b)/,
} as const;

/** The latest such figure that any note tells. */
export function figureIn(
  entries: readonly { readonly notes?: string | undefined }[],
  name: keyof typeof figures,
): number | undefined {
  for (let at = entries.length - 1; at >= 0; at--) {
    const notes = entries[at]?.notes;
    const said = notes === undefined ? null : figures[name].exec(plain(notes).replace(/['’]/g, ""));
    const groups: readonly (string | undefined)[] = said?.slice(1) ?? [];
    const found = groups.find((group) => group !== undefined);
    if (found !== undefined) return Number(found);
  }
  return undefined;
}

/** What growers write of water and feed that changes what is to be done. Common practice, no source. */
const told = {
  "softened water": { says: /\b(?:soften(?:er|ed)|enthartet\w*|descalcificad\w*)\b/, unless: /\b(?:not|no|before the|bypass\w*|without)\b/ },
  "acid feed": {
    says: /\bammonium\b|\bacid (?:type )?(?:feed|fertili[sz]er)\b|\burea\b/,
    unless: /\b(?:no|not|less|low|without|instead of|stopped|toxic\w*)\b/,
  },
} as const;

/** Whether a note tells it, and none denies it in the same statement. */
export const noted = (entries: readonly { readonly notes?: string | undefined }[], name: keyof typeof told): boolean =>
  entries.some(({ notes }) =>
    notes !== undefined &&
    plain(notes)
      .replace(/['’]/g, "")
      .split(/[.;,!?\n]/)
      .some((each) => told[name].says.test(each) && !told[name].unless.test(each)),
  );
