import { document, element, vocabularies } from "./xml";

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
