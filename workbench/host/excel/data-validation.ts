import type { Area } from "./area";
import { intersection } from "./area-maths";
import { removeRecord, type ValidationRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { assertWritable } from "./sheet-access";

type Part = "rule" | "prompt" | "errorAlert";

function part(name: Part): Properties<Area, DataValidation>[string] {
  return {
    get: (_, owner) => owner.record()?.[name] ?? {},
    set: (area, value, owner) => {
      assertWritable(owner.context, area.sheetId);
      owner.recordToWrite()[name] = value as Readonly<Record<string, unknown>>;
    },
  };
}

const validationProperties: Properties<Area, DataValidation> = {
  rule: part("rule"),
  prompt: part("prompt"),
  errorAlert: part("errorAlert"),
  ignoreBlanks: { get: () => true, set: () => undefined },
  type: { get: (_, owner) => Object.keys(owner.record()?.rule ?? {})[0] ?? "None" },
};

/** What may be typed into the cells of a range. */
export class DataValidation extends ClientObject<Area> {
  protected override readonly properties = validationProperties;

  clear(): void {
    this.write(() => {
      assertWritable(this.context, this.target.sheetId);
      const { validations } = this.context.records;
      for (const each of validations.filter(({ area }) => intersection(area, this.target) !== undefined)) removeRecord(validations, each);
    });
  }

  record(): ValidationRecord | undefined {
    return this.context.records.validations.filter(({ area }) => intersection(area, this.target) !== undefined).at(-1);
  }

  recordToWrite(): ValidationRecord {
    const { validations } = this.context.records;
    const { row, column, rowCount, columnCount, sheetId } = this.target;
    const same = validations.find(({ area }) =>
      area.sheetId === sheetId && area.row === row && area.column === column && area.rowCount === rowCount && area.columnCount === columnCount);
    if (same !== undefined) return same;
    const fresh: ValidationRecord = { area: this.target, rule: {}, prompt: {}, errorAlert: {} };
    validations.push(fresh);
    return fresh;
  }
}

declareProperties(DataValidation, validationProperties);
