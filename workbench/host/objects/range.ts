import { type Area, sheetColumns, sheetRows } from "../excel/area";
import { bounding, intersection, moved } from "../excel/area-maths";
import { HostError } from "../excel/host-error";
import { assertWritable } from "../excel/sheet-access";
import { surroundingRegion } from "../excel/surrounding-region";
import { areaGiven, wholeGiven } from "./areas-given";
import { type HostDocument, type HostObject, type Kind, object, objectIfAny } from "./kind";
import { rangeProperties } from "./range-properties";

type Find = NonNullable<Kind<Area>["finds"]>[string];

const found = (area: Area | undefined): HostObject | null => objectIfAny("Range", area);

/** The same, where the host refuses what it does not find. */
function orRefused(area: Area | undefined): HostObject {
  if (area === undefined) throw new HostError("ItemNotFound", "no such cells");
  return object("Range", area);
}

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
  return spill === undefined ? undefined : { ...spill, rowCount: 1, columnCount: 1 };
}

const shared: (area: Area, document: HostDocument, other: unknown) => Area | undefined = (area, document, other) =>
  intersection(area, areaGiven(document, other, area.sheetId));

const oneCell = (area: Area): Area => ({ ...area, rowCount: 1, columnCount: 1 });

function merged(area: Area, { records }: HostDocument): HostObject | null {
  const touched = records.merged.filter((each) => intersection(each, area) !== undefined);
  return touched.length === 0 ? null : object("RangeAreas", touched);
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
    getCell: to((area, row = 0, column = 0) => oneCell(moved(area, row, column))),
    getRow: line((area, index) => ({ ...moved(area, index, 0), rowCount: 1 }), ({ rowCount }) => rowCount),
    getColumn: line((area, index) => ({ ...moved(area, 0, index), columnCount: 1 }), ({ columnCount }) => columnCount),
    getEntireColumn: to((area) => ({ ...area, row: 0, rowCount: sheetRows })),
    getEntireRow: to((area) => ({ ...area, column: 0, columnCount: sheetColumns })),
    getOffsetRange: to((area, rows = 0, columns = 0) => moved(area, rows, columns)),
    getResizedRange: to((area, rows, columns) => moved(area, 0, 0, rows, columns)),
    getAbsoluteResizedRange: to((area, rows = 1, columns = 1) => moved(area, 0, 0, rows - area.rowCount, columns - area.columnCount)),
    getLastRow: to((area) => ({ ...area, row: area.row + area.rowCount - 1, rowCount: 1 })),
    getLastColumn: to((area) => ({ ...area, column: area.column + area.columnCount - 1, columnCount: 1 })),
    getLastCell: to((area) => oneCell(moved(area, area.rowCount - 1, area.columnCount - 1))),
    getRowsBelow: (area, _, count) => object("Range", { ...moved(area, area.rowCount, 0), rowCount: wholeGiven(count, 1) }),
    getColumnsAfter: (area, _, count) => object("Range", { ...moved(area, 0, area.columnCount), columnCount: wholeGiven(count, 1) }),
    getBoundingRect: (area, document, other) => object("Range", bounding(area, areaGiven(document, other, area.sheetId))),
    getSurroundingRegion: (area, { store }) => object("Range", surroundingRegion(store, area)),
    getIntersection: (area, document, other) => orRefused(shared(area, document, other)),
    getIntersectionOrNullObject: (area, document, other) => found(shared(area, document, other)),
    getUsedRange: (area, document, valuesOnly) => object("Range", used(area, document, valuesOnly) ?? oneCell(area)),
    getUsedRangeOrNullObject: (area, document, valuesOnly) => found(used(area, document, valuesOnly)),
    getSpillingToRange: (area, document) => orRefused(spillFrom(area, document)),
    getSpillingToRangeOrNullObject: (area, document) => found(spillFrom(area, document)),
    getSpillParent: (area, document) => orRefused(spillParent(area, document)),
    getSpillParentOrNullObject: (area, document) => found(spillParent(area, document)),
    getMergedAreasOrNullObject: merged,
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
