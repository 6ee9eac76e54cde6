import { document, element, vocabularies } from "./xml";

/** One file inside the workbook's package. */
export interface Part {
  readonly path: string;
  readonly content: string;
  /** Written as UTF-16, lowest byte first; UTF-8 otherwise. */
  readonly isUtf16?: boolean;
  /** Its content type; a .rels or .vml part has the default one. */
  readonly type?: string;
}

/** A reference from one part to another: its kind, and where it lies as seen from the part that refers. */
export type Relation = readonly [kind: string, target: string];

/** A .rels part; the first relation is rId1. */
export const relationsPart = (list: readonly Relation[]): string =>
  document(
    element(
      "Relationships",
      { xmlns: vocabularies.packageRelations },
      ...list.map(([Type, Target], i) => element("Relationship", { Id: `rId${i + 1}`, Type, Target })),
    ),
  );
