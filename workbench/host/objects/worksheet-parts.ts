import { areaGiven } from "./areas-given";
import type { Kinds, Property } from "./kind";

const kept = (name: string): Property<string> => ({
  get: (id, { records }) => records.sheet(id).pageLayout[name],
  set: (id, value, { records }) => { records.sheet(id).pageLayout[name] = value; },
});

const layout = ["orientation", "paperSize", "centerHorizontally", "zoom"];

export const worksheetPartKinds = {
  /** Whether a person has locked the sheet. */
  WorksheetProtection: { properties: { protected: { get: (id, { records }) => records.sheet(id).protected } } },
  /** Rows and columns that stay in sight. */
  WorksheetFreezePanes: {
    acts: {
      freezeRows: (id, { records }, rows) => { records.sheet(id).frozen = { rows: Number(rows ?? 1), columns: 0 }; },
    },
  },
  /** How the sheet prints; it is only remembered. */
  PageLayout: {
    properties: Object.fromEntries(layout.map((name) => [name, kept(name)])),
    acts: { setPrintArea: (id, document, range) => { document.records.sheet(id).pageLayout["printArea"] = areaGiven(document, range, id); } },
  },
} satisfies Partial<Kinds>;
