import type { Area } from "./area";
import { intersection } from "./area-maths";
import { type ConditionalFormatRecord, removeRecord } from "./book-records";
import { Collection } from "./collection";
import { ConditionalFormat } from "./conditional-format";
import { HostError } from "./host-error";
import type { RequestContext } from "./request-context";
import { assertWritable } from "./sheet-access";

const types: readonly string[] = ["CellValue", "ContainsText", "Custom"] satisfies ConditionalFormatRecord["type"][];

/** The conditional formats that touch a range. */
export class ConditionalFormatCollection extends Collection<ConditionalFormat, ConditionalFormatRecord> {
  constructor(context: RequestContext, private readonly area: () => Area) {
    super(context, () => true);
  }

  add(type: string): ConditionalFormat {
    let made: ConditionalFormatRecord | undefined;
    this.write(() => {
      if (!types.includes(type)) throw new HostError("InvalidArgument", `no conditional format of type ${type}`);
      const area = this.area();
      assertWritable(this.context, area.sheetId);
      const { records } = this.context;
      const id = records.newId("conditional-format");
      made = { id, type: type as ConditionalFormatRecord["type"], area, rule: undefined, fill: undefined, color: undefined, stopIfTrue: false };
      records.conditionalFormats.push(made);
    });
    return new ConditionalFormat(this.context, () => made);
  }

  getItem(id: string): ConditionalFormat {
    return new ConditionalFormat(this.context, () => this.keys().find((record) => record.id === id));
  }

  getItemAt(index: number): ConditionalFormat {
    return new ConditionalFormat(this.context, () => this.keys()[index]);
  }

  clearAll(): void {
    this.write(() => {
      assertWritable(this.context, this.area().sheetId);
      for (const record of this.keys()) removeRecord(this.context.records.conditionalFormats, record);
      this.context.records.onChange();
    });
  }

  protected override keys(): readonly ConditionalFormatRecord[] {
    const area = this.area();
    return this.context.records.conditionalFormats.filter((record) => intersection(record.area, area) !== undefined);
  }

  protected override itemFor(record: ConditionalFormatRecord): ConditionalFormat {
    return new ConditionalFormat(this.context, () => record);
  }
}
