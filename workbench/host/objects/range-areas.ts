import { addressOf } from "../excel/area";
import { cellCountOf, intersection } from "../excel/area-maths";
import { sheetOf } from "../excel/sheet-access";
import { type Kinds, object } from "./kind";

export const areasKinds = {
  /** Several rectangles of one sheet, as a selection with Ctrl gives them. */
  RangeAreas: {
    properties: {
      address: { get: (areas, document) => areas.map((area) => addressOf(area, sheetOf(document, area.sheetId).name)).join(",") },
      cellCount: { get: (areas) => areas.reduce((sum, area) => sum + cellCountOf(area), 0) },
    },
    parts: {
      areas: (areas) => object("RangeCollection", areas),
      worksheet: ([first]) => object("Worksheet", first?.sheetId ?? ""),
    },
    finds: {
      getUsedRangeAreasOrNullObject: (areas, { store }, valuesOnly) => {
        const used = areas.flatMap((area) => {
          const filled = store.filledArea(area.sheetId, valuesOnly === true);
          return filled === undefined ? [] : (intersection(area, filled) ?? []);
        });
        return used.length > 0 ? object("RangeAreas", used) : null;
      },
    },
  },
  RangeCollection: { items: (areas) => areas.map((area) => object("Range", area)) },
} satisfies Partial<Kinds>;
