import { addressOf, type Area, sheetRows } from "../excel/area";
import { cellCountOf, intersection } from "../excel/area-maths";
import { sheetOf } from "../excel/sheet-access";
import { areaGiven } from "./areas-given";
import { type HostObject, type Kind, type Kinds, object } from "./kind";

/** What of each area lies inside its limits; nothing where none does. */
function cut(areas: readonly Area[], limitsOf: (area: Area) => Area | undefined): HostObject | null {
  const kept = areas.flatMap((area) => {
    const limits = limitsOf(area);
    const part = limits === undefined ? undefined : intersection(area, limits);
    return part === undefined ? [] : [part];
  });
  return kept.length > 0 ? object("RangeAreas", kept) : null;
}

/** Several rectangles of one sheet, as a selection with Ctrl gives them. */
const rangeAreas: Kind<readonly Area[]> = {
  properties: {
    address: { get: (areas, document) => areas.map((area) => addressOf(area, sheetOf(document, area.sheetId).name)).join(",") },
    areaCount: { get: (areas) => areas.length },
    cellCount: { get: (areas) => areas.reduce((sum, area) => sum + cellCountOf(area), 0) },
    isEntireColumn: { get: (areas) => areas.every(({ rowCount }) => rowCount === sheetRows) },
  },
  parts: {
    areas: (areas) => object("RangeCollection", areas),
    worksheet: ([first]) => object("Worksheet", first?.sheetId ?? ""),
  },
  finds: {
    getIntersectionOrNullObject: (areas, document, other) => cut(areas, (area) => areaGiven(document, other, area.sheetId)),
    getUsedRangeAreasOrNullObject: (areas, { store }, valuesOnly) => cut(areas, ({ sheetId }) => store.filledArea(sheetId, valuesOnly === true)),
  },
};

export const areasKinds: Pick<Kinds, "RangeAreas" | "RangeCollection"> = {
  RangeAreas: rangeAreas,
  RangeCollection: { items: (areas) => areas.map((area) => object("Range", area)) },
};
