import { type ChartRecord, removeRecord } from "./book-records";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { Collection } from "./collection";
import { bounding } from "./area-maths";
import type { Range } from "./range";
import type { RequestContext } from "./request-context";
import { assertWritable } from "./sheet-access";

function written(name: "name" | "left" | "top" | "width" | "height"): Properties<ChartRecord, Chart>[string] {
  return {
    get: (record) => record[name],
    set: (record, value, { context }) => {
      Object.assign(record, { [name]: value });
      context.records.onChange();
    },
  };
}

const chartProperties: Properties<ChartRecord, Chart> = {
  id: { get: ({ id }) => id },
  chartType: { get: ({ type }) => type },
  name: written("name"),
  left: written("left"),
  top: written("top"),
  width: written("width"),
  height: written("height"),
};

/** A chart of the host; the stand-in keeps what it shows and where, and draws nothing. */
export class Chart extends ClientObject<ChartRecord> {
  protected override readonly properties = chartProperties;

  get title(): ChartTitle { return this.inner("title", () => new ChartTitle(this.context, () => this.targetIfAny)); }

  setPosition(start: Range, end?: Range): void {
    this.write(() => {
      const area = end === undefined ? start.target : bounding(start.target, end.target);
      Object.assign(this.target, this.context.store.box(area));
      this.context.records.onChange();
    });
  }

  delete(): void {
    this.write(() => {
      removeRecord(this.context.records.charts, this.target);
      this.context.records.onChange();
    });
  }
}

declareProperties(Chart, chartProperties);

const titleProperties: Properties<ChartRecord, ChartTitle> = {
  text: { get: ({ title }) => title, set: (record, text) => { record.title = String(text); } },
  visible: { get: () => true, set: () => undefined },
};

class ChartTitle extends ClientObject<ChartRecord> {
  protected override readonly properties = titleProperties;
}

declareProperties(ChartTitle, titleProperties);

export class ChartCollection extends Collection<Chart, ChartRecord> {
  constructor(context: RequestContext, private readonly sheetId: () => string) {
    super(context, () => true);
  }

  add(type: string, source: Range): Chart {
    let made: ChartRecord | undefined;
    this.write(() => {
      const sheetId = this.sheetId();
      assertWritable(this.context, sheetId);
      const { records } = this.context;
      const name = `Chart ${records.charts.length + 1}`;
      made = { id: records.newId("chart"), sheetId, type, source: source.target, name, title: "", left: 0, top: 0, width: 360, height: 216 };
      records.charts.push(made);
      records.onChange();
    });
    return new Chart(this.context, () => made);
  }

  getItem(name: string): Chart { return new Chart(this.context, () => this.keys().find((record) => record.name === name)); }
  getItemOrNullObject(name: string): Chart { return new Chart(this.context, () => this.keys().find((record) => record.name === name), true); }

  protected override keys(): readonly ChartRecord[] {
    return this.context.records.charts.filter(({ sheetId }) => sheetId === this.sheetId());
  }

  protected override itemFor(record: ChartRecord): Chart {
    return new Chart(this.context, () => record);
  }
}
