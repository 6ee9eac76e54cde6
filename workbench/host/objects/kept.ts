import { HostError } from "../excel/host-error";
import { field, type KeptOne, type Kinds, object } from "./kind";

type Kept = KeptOne["kept"];

/** As it comes back from a file. */
const copied = (value: unknown): unknown => (value === undefined ? undefined : JSON.parse(JSON.stringify(value)));

const collection = (item: "Setting" | "WorksheetCustomProperty", assertKeepable: (key: unknown, value: unknown) => void) => ({
  items: (kept: Kept) => [...kept.keys()].map((key) => object(item, { kept, key })),
  acts: {
    add: (kept: Kept, _: unknown, key: unknown, value: unknown) => {
      assertKeepable(key, value);
      kept.set(String(key), copied(value));
      return object(item, { kept, key: String(key) });
    },
  },
});

const one: Kinds["Setting"] = {
  id: ({ key }) => key,
  properties: {
    key: field("key"),
    value: { get: ({ kept, key }) => copied(kept.get(key)), set: ({ kept, key }, value) => { kept.set(key, copied(value)); } },
  },
  acts: { delete: ({ kept, key }) => { kept.delete(key); } },
};

/** What the add-in keeps with the workbook or with one sheet, under keys; with a sheet only texts. */
export const keptKinds = {
  SettingCollection: collection("Setting", () => undefined),
  Setting: one,
  WorksheetCustomPropertyCollection: collection("WorksheetCustomProperty", (key, value) => {
    if (typeof key !== "string" || key === "" || typeof value !== "string") throw new HostError("InvalidArgument", "a key and a text are needed");
  }),
  WorksheetCustomProperty: one,
} satisfies Partial<Kinds>;
