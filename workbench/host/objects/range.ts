import { type Area, sheetRows } from "../excel/area";
import { firstCell, intersection, moved } from "../excel/area-maths";
import { HostError } from "../excel/host-error";
import { assertWritable } from "../excel/sheet-access";
import { surroundingRegion } from "../excel/surrounding-region";
import { areaGiven, wholeGiven } from "./areas-given";
import { type HostDocument, type HostObject, type Kind, object, objectIfAny } from "./kind";
import { rangeProperties } from "./range-properties";

type Find = NonNullable<Kind<Area>["finds"]>[string];

const to = (find: (area: Area, ...given: number[]) => Area): Find =>
  (area, _, ...given) => object("Range", find(area, ...given.map((each) => wholeGiven(each))));

/** One line of the range, counted within it. */
const line = (at: (area: Area, index: number) => Area, count: (area: Area) => number): Find => (area, _, given) => {
  const index = wholeGiven(given);
  if (index >= count(area)) throw new HostError("InvalidArgument", "outside the range");
  return object("Range", at(area, index));
};

function used(area: Area, { store }: HostDocument, valuesOnly: unknown): Area | undefined {
  const filled = store.filledArea(area.sheetId, valuesOnly === true);
  return filled === undefined ? undefined : intersection(filled, area);
}

const spillOver = (area: Area, { store }: HostDocument): Area | undefined => store.spillOver(area.row, area.column, area.sheetId);

function spillFrom(area: Area, document: HostDocument): Area | undefined {
  const spill = spillOver(area, document);
  return spill?.row === area.row && spill.column === area.column ? spill : undefined;
}

function spillParent(area: Area, document: HostDocument): Area | undefined {
  const spill = spillOver(area, document);
  return spill && firstCell(spill);
}

/** The host refuses cells that are not there. */
function shared(area: Area, document: HostDocument, other: unknown): HostObject {
  const both = intersection(area, areaGiven(document, other, area.sheetId));
  if (both === undefined) throw new HostError("ItemNotFound", "no such cells");
  return object("Range", both);
}

/** A rectangle of cells. */
export const range: Kind<Area> = {
  properties: rangeProperties,
  parts: {
    format: (area) => object("RangeFormat", area),
    conditionalFormats: (area) => object("ConditionalFormatCollection", area),
    dataValidation: (area) => object("DataValidation", area),
    worksheet: ({ sheetId }) => object("Worksheet", sheetId),
  },
  finds: {
    getCell: to((area, row = 0, column = 0) => firstCell(moved(area, row, column))),
    getRow: line((area, index) => ({ ...moved(area, index, 0), rowCount: 1 }), ({ rowCount }) => rowCount),
    getColumn: line((area, index) => ({ ...moved(area, 0, index), columnCount: 1 }), ({ columnCount }) => columnCount),
    getEntireColumn: to((area) => ({ ...area, row: 0, rowCount: sheetRows })),
    getOffsetRange: to((area, rows = 0, columns = 0) => moved(area, rows, columns)),
    getResizedRange: to((area, rows, columns) => moved(area, 0, 0, rows, columns)),
    getSurroundingRegion: (area, { store }) => object("Range", surroundingRegion(store, area)),
    getIntersection: shared,
    getUsedRange: (area, document, valuesOnly) => object("Range", used(area, document, valuesOnly) ?? firstCell(area)),
    getUsedRangeOrNullObject: (area, document, valuesOnly) => objectIfAny("Range", used(area, document, valuesOnly)),
    getSpillingToRangeOrNullObject: (area, document) => objectIfAny("Range", spillFrom(area, document)),
    getSpillParentOrNullObject: (area, document) => objectIfAny("Range", spillParent(area, document)),
    getTables: (area, _, fullyContained) => object("TableCollection", { touching: area, fullyContained: fullyContained === true }),
    getVisibleView: (area) => object("RangeView", area),
    _ValidateArraySize: () => undefined,
  },
  acts: {
    clear: (area, document, applyTo) => {
      const { store } = document;
      assertWritable(document, area.sheetId);
      if (applyTo !== "Formats") store.write(area, Array.from(store.values(area), (row) => row.map(() => "")));
      if (applyTo !== "Contents") store.setLook(area, undefined);
    },
  },
  shows: {
    select: (area, { store }) => { store.select([area]); },
  },
};
