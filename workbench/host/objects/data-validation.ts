import { cellsOf, type Area } from "../excel/area";
import { touches } from "../excel/area-maths";
import type { ValidationRecord } from "../excel/book-records";
import { assertWritable } from "../excel/sheet-access";
import { upperFirst } from "../client/protocol";
import { type HostDocument, type Kind, type Property } from "./kind";

const last = (area: Area, { records }: HostDocument): ValidationRecord | undefined =>
  records.validations.filter((each) => touches(each.area, area)).at(-1);

/** The limits of just this area, made when there are none. */
function ofJust(area: Area, { records }: HostDocument): ValidationRecord {
  const same = records.validations.find((each) => each.area.sheetId === area.sheetId && cellsOf(each.area) === cellsOf(area));
  if (same !== undefined) return same;
  const fresh: ValidationRecord = { area, rule: {}, prompt: {}, errorAlert: {} };
  records.validations.push(fresh);
  return fresh;
}

const part = (name: "rule" | "prompt" | "errorAlert"): Property<Area> => ({
  get: (area, document) => last(area, document)?.[name] ?? {},
  set: (area, value, document) => {
    assertWritable(document, area.sheetId);
    ofJust(area, document)[name] = value as Readonly<Record<string, unknown>>;
    document.records.onChange();
  },
});

/** What may be typed into the cells of a range. */
export const dataValidation: Kind<Area> = {
  properties: {
    rule: part("rule"),
    prompt: part("prompt"),
    errorAlert: part("errorAlert"),
    type: { get: (area, document) => upperFirst(Object.keys(last(area, document)?.rule ?? {})[0] ?? "none") },
  },
  acts: {
    clear: (area, document) => {
      assertWritable(document, area.sheetId);
      document.records.remove(document.records.validations, (each) => touches(each.area, area));
    },
  },
};
