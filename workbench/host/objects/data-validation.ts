import type { Area } from "../excel/area";
import { intersection } from "../excel/area-maths";
import { removeRecord, type ValidationRecord } from "../excel/book-records";
import { assertWritable } from "../excel/sheet-access";
import { fixed, type HostDocument, type Kind, type Property } from "./kind";

const touching = (area: Area, { records }: HostDocument): ValidationRecord[] =>
  records.validations.filter((each) => intersection(each.area, area) !== undefined);

const last = (area: Area, document: HostDocument): ValidationRecord | undefined => touching(area, document).at(-1);

/** The limits of just this area, made when there are none. */
function ofJust(area: Area, document: HostDocument): ValidationRecord {
  const same = touching(area, document).find(({ area: { row, column, rowCount, columnCount } }) =>
    row === area.row && column === area.column && rowCount === area.rowCount && columnCount === area.columnCount);
  if (same !== undefined) return same;
  const fresh: ValidationRecord = { area, rule: {}, prompt: {}, errorAlert: {} };
  document.records.validations.push(fresh);
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
    ignoreBlanks: fixed(true),
    type: {
      get: (area, document) => {
        const [kind] = Object.keys(last(area, document)?.rule ?? {});
        return kind === undefined ? "None" : kind.charAt(0).toUpperCase() + kind.slice(1);
      },
    },
  },
  acts: {
    clear: (area, document) => {
      assertWritable(document, area.sheetId);
      for (const each of touching(area, document)) removeRecord(document.records.validations, each);
    },
  },
};
