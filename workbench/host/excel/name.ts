import { addressOf } from "./area";
import { type NameRecord, removeRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { Collection } from "./collection";
import type { Range } from "./range";
import type { RequestContext } from "./request-context";
import { areaCalled, sheetOf } from "./sheet-access";
import { assertTableName } from "./table-names";

const nameProperties: Properties<NameRecord, NamedItem> = {
  name: { get: ({ name }) => name },
  formula: {
    get: ({ formula }) => formula,
    set: (record, formula, { context }) => {
      record.formula = String(formula);
      context.records.onChange();
    },
  },
  comment: { get: ({ comment }) => comment, set: (record, comment) => { record.comment = String(comment); } },
  visible: { get: () => true },
};

/** A defined name. */
export class NamedItem extends ClientObject<NameRecord> {
  protected override readonly properties = nameProperties;

  getRange(): Range { return this.range(false); }
  getRangeOrNullObject(): Range { return this.range(true); }

  delete(): void {
    this.write(() => {
      removeRecord(this.context.records.names, this.target);
      this.context.records.onChange();
    });
  }

  private range(mayBeAbsent: boolean): Range {
    return this.context.make.range(this.context, () => areaCalled(this.context, this.target.name, this.context.store.activeSheetId()), mayBeAbsent);
  }
}

declareProperties(NamedItem, nameProperties);

export class NameCollection extends Collection<NamedItem, NameRecord> {
  constructor(context: RequestContext) {
    super(context, () => true);
  }

  add(name: string, reference: Range | string, comment = ""): NamedItem {
    let made: NameRecord | undefined;
    this.write(() => {
      assertTableName(this.context, name);
      const { records } = this.context;
      made = { id: records.newId("name"), name, formula: this.formulaFor(reference), comment };
      records.names.push(made);
      records.onChange();
    });
    return new NamedItem(this.context, () => made);
  }

  getItem(name: string): NamedItem { return new NamedItem(this.context, () => this.called(name)); }
  getItemOrNullObject(name: string): NamedItem { return new NamedItem(this.context, () => this.called(name), true); }

  protected override keys(): readonly NameRecord[] {
    return this.context.records.names;
  }

  protected override itemFor(record: NameRecord): NamedItem {
    return new NamedItem(this.context, () => record);
  }

  private formulaFor(reference: Range | string): string {
    if (typeof reference === "string") return reference.startsWith("=") ? reference : `=${reference}`;
    const { target } = reference;
    return `=${addressOf(target, sheetOf(this.context, target.sheetId).name).replace(/([A-Z]+)(\d+)(?=$|:)/g, "$$$1$$$2")}`;
  }

  private called(wanted: string): NameRecord | undefined {
    return this.keys().find(({ name }) => name.toLowerCase() === wanted.toLowerCase());
  }
}
