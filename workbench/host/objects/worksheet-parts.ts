import type { Area } from "../excel/area";
import { HostError } from "../excel/host-error";
import { sheetOf } from "../excel/sheet-access";
import { areaGiven } from "./areas-given";
import { type HostDocument, type Kinds, object, objectIfAny, type Property } from "./kind";

function freeze(id: string, { records }: HostDocument, rows: number, columns: number): void {
  records.sheet(id).frozen = { rows, columns };
  records.onChange();
}

function frozen(id: string, { records }: HostDocument): Area | undefined {
  const { rows, columns } = records.sheet(id).frozen;
  return rows + columns === 0 ? undefined : { sheetId: id, row: 0, column: 0, rowCount: Math.max(rows, 1), columnCount: Math.max(columns, 1) };
}

const kept = (name: string): Property<string> => ({
  get: (id, { records }) => records.sheet(id).pageLayout[name],
  set: (id, value, { records }) => { records.sheet(id).pageLayout[name] = value; },
});

const layout = ["orientation", "paperSize", "printGridlines", "printHeadings", "centerHorizontally", "centerVertically", "zoom"];

const keep = (name: string) => (id: string, document: HostDocument, range: unknown): void => {
  document.records.sheet(id).pageLayout[name] = areaGiven(document, range, id);
};

const isProtected = (id: string, { records }: HostDocument, value: boolean): void => { records.sheet(id).protected = value; };

type PartKinds =
  | "WorksheetProtection" | "WorksheetFreezePanes" | "PageLayout" | "WorksheetCustomPropertyCollection" | "WorksheetCustomProperty";

export const worksheetPartKinds: Pick<Kinds, PartKinds> = {
  /** Whether a person has locked the sheet. */
  WorksheetProtection: {
    properties: { protected: { get: (id, { records }) => records.sheet(id).protected } },
    acts: {
      protect: (id, document) => { isProtected(id, document, true); },
      unprotect: (id, document) => { isProtected(id, document, false); },
    },
  },
  /** Rows and columns that stay in sight. */
  WorksheetFreezePanes: {
    finds: { getLocationOrNullObject: (id, document) => objectIfAny("Range", frozen(id, document)) },
    acts: {
      freezeRows: (id, document, rows) => { freeze(id, document, Number(rows ?? 1), 0); },
      freezeColumns: (id, document, columns) => { freeze(id, document, 0, Number(columns ?? 1)); },
      unfreeze: (id, document) => { freeze(id, document, 0, 0); },
      freezeAt: (id, document, range) => {
        const { row, rowCount, column, columnCount } = areaGiven(document, range, id);
        freeze(id, document, row + rowCount, column + columnCount);
      },
    },
  },
  /** How the sheet prints; it is only remembered. */
  PageLayout: {
    properties: Object.fromEntries(layout.map((name) => [name, kept(name)])),
    acts: { setPrintArea: keep("printArea"), setPrintTitleRows: keep("titleRows") },
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
};
