import { HostError } from "../excel/host-error";
import { sheetOf } from "../excel/sheet-access";
import { areaGiven } from "./areas-given";
import { type Kinds, object, type Property } from "./kind";

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
  /** What the add-in keeps with one sheet. */
  WorksheetCustomPropertyCollection: {
    items: (sheetId, { records }) =>
      [...records.sheet(sheetId).custom.keys()].map((key) => object("WorksheetCustomProperty", { sheetId, key })),
    acts: {
      add: (sheetId, document, key, value) => {
        if (typeof key !== "string" || key === "" || typeof value !== "string") throw new HostError("InvalidArgument", "a key and a text are needed");
        document.records.sheet(sheetOf(document, sheetId).id).custom.set(key, value);
        return object("WorksheetCustomProperty", { sheetId, key });
      },
    },
  },
  WorksheetCustomProperty: {
    id: ({ key }) => key,
    properties: {
      key: { get: ({ key }) => key },
      value: {
        get: ({ sheetId, key }, { records }) => records.sheet(sheetId).custom.get(key),
        set: ({ sheetId, key }, value, { records }) => { records.sheet(sheetId).custom.set(key, String(value)); },
      },
    },
    acts: { delete: ({ sheetId, key }, { records }) => { records.sheet(sheetId).custom.delete(key); } },
  },
} satisfies Partial<Kinds>;
