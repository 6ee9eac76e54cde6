import { addressOf, type Area } from "./area";
import { cellCountOf, intersection } from "./area-maths";
import { ClientObject, declareProperties, type Properties } from "./client-object";
import { Collection } from "./collection";
import type { Range } from "./range";
import { areaCalled, sheetOf } from "./sheet-access";
import type { Worksheet } from "./worksheet";

const rangeAreasProperties: Properties<readonly Area[], RangeAreas> = {
  address: {
    get: (areas, { context }) => areas.map((area) => addressOf(area, sheetOf(context, area.sheetId).name)).join(","),
  },
  areaCount: { get: (areas) => areas.length },
  cellCount: { get: (areas) => areas.reduce((sum, area) => sum + cellCountOf(area), 0) },
  isEntireColumn: { get: (areas) => areas.every(({ rowCount }) => rowCount === 2 ** 20) },
};

/** Several rectangles of one sheet, as a selection with Ctrl gives them. */
export class RangeAreas extends ClientObject<readonly Area[]> {
  protected override readonly properties = rangeAreasProperties;
  protected override readonly endsWithRun = true;

  get areas(): RangeCollection {
    return this.inner("areas", () => new RangeCollection(this.context, this));
  }

  get worksheet(): Worksheet {
    return this.inner("worksheet", () => this.context.make.worksheet(this.context, () => this.target[0]?.sheetId));
  }

  getIntersectionOrNullObject(other: Range | string): RangeAreas {
    return this.cut((area) => (typeof other === "string" ? areaCalled(this.context, other, area.sheetId) : other.target));
  }

  getUsedRangeAreasOrNullObject(valuesOnly = false): RangeAreas {
    return this.cut((area) => this.context.store.filledArea(area.sheetId, valuesOnly));
  }

  select(): void {
    this.write(() => { this.context.store.select(this.target); });
  }

  private cut(keep: (area: Area) => Area | undefined): RangeAreas {
    return this.context.make.rangeAreas(this.context, () => {
      const kept = this.target.flatMap((area) => {
        const limits = keep(area);
        const part = limits === undefined ? undefined : intersection(area, limits);
        return part === undefined ? [] : [part];
      });
      return kept.length > 0 ? kept : undefined;
    }, true);
  }
}

declareProperties(RangeAreas, rangeAreasProperties);

class RangeCollection extends Collection<Range, Area> {
  constructor(context: RangeAreas["context"], private readonly owner: RangeAreas) {
    super(context, () => true);
  }

  getItemAt(index: number): Range {
    return this.context.make.range(this.context, () => this.keys()[index]);
  }

  protected override keys(): readonly Area[] {
    return this.owner.targetIfAny ?? [];
  }

  protected override itemFor(area: Area): Range {
    return this.context.make.range(this.context, () => area);
  }
}
