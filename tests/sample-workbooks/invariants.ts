import { address, addressesIn, corners, inReadingOrder, placeOf } from "../../sample-workbooks/xlsx/address";
import { childText, elements, type Parts, sheetPaths, shownText, type StoredCell, storedCells, tablePaths } from "./parts";

/** What is wrong with a workbook that a validator of the file format does not see; one line per fault. */
export type Invariant = (parts: Parts) => string[];

const ours = /_xldudf_/;
const formulas = (parts: Parts): (StoredCell & { formula: NonNullable<StoredCell["formula"]> })[] =>
  sheetPaths(parts)
    .flatMap((path) => storedCells(parts, path))
    .filter((cell): cell is StoredCell & { formula: NonNullable<StoredCell["formula"]> } => cell.formula !== undefined);

/** Every check by the promise that it holds. */
export const invariants: Readonly<Record<string, Invariant>> = {
  "no formula holds one of our functions under its typed name": (parts) => {
    const columns = tablePaths(parts).flatMap((path) => elements(parts, path, "calculatedColumnFormula").map((each) => each.textContent ?? ""));
    const texts = [...formulas(parts).map(({ at, formula }) => `${at}: ${formula.text}`), ...columns];
    return texts.filter((text) => /\b[A-Z][A-Z0-9]*\.[A-Z][A-Z0-9]*\(/.test(text));
  },

  "every formula has a cached value": (parts) => formulas(parts).filter(({ value }) => value === undefined).map(({ sheet, at }) => `${sheet} ${at}`),

  "every numeric cached value is a finite number": (parts) =>
    formulas(parts)
      .filter(({ type, value }) => type === null && (value === "" || !Number.isFinite(Number(value))))
      .map(({ sheet, at, value }) => `${sheet} ${at}: ${value ?? ""}`),

  "a cell with one of our functions is a dynamic array, and only such a cell or a spill": (parts) =>
    formulas(parts)
      .filter(({ at, cm, formula }) => {
        const dynamic = cm === "1" && formula.kind === "array" && formula.ref?.split(":")[0] === at;
        const plain = cm === null && formula.kind === null;
        return ours.test(formula.text) ? !dynamic : !(plain || dynamic);
      })
      .map(({ sheet, at }) => `${sheet} ${at}`),

  "metadata.xml holds what cm points at, and the workbook relates to it": (parts) => {
    const dynamic = elements(parts, "xl/metadata.xml", "xda:dynamicArrayProperties");
    const faults = [];
    if (dynamic.length !== 1 || dynamic[0]?.getAttribute("fDynamic") !== "1") faults.push("no dynamic array properties");
    if (!/relationships\/sheetMetadata" Target="metadata\.xml"/.test(parts["xl/_rels/workbook.xml.rels"] ?? "")) faults.push("no relation");
    if (!/PartName="\/xl\/metadata\.xml"/.test(parts["[Content_Types].xml"] ?? "")) faults.push("no content type");
    return faults;
  },

  "the calculation id is 191029 or later and nothing forces a recalculation": (parts) => {
    const calc = elements(parts, "xl/workbook.xml", "calcPr")[0];
    const faults = [];
    if (!(Number(calc?.getAttribute("calcId")) >= 191029)) faults.push("calcId");
    if (calc?.getAttribute("fullCalcOnLoad") === "1") faults.push("fullCalcOnLoad");
    if ("xl/calcChain.xml" in parts) faults.push("calcChain");
    return faults;
  },

  "cells and rows stand in reading order, each once": (parts) =>
    sheetPaths(parts).flatMap((path) => {
      const places = storedCells(parts, path).map(({ at }) => placeOf(at));
      return places.flatMap((place, i) => (i > 0 && inReadingOrder(places[i - 1] ?? place, place) >= 0 ? [`${path} row ${place.row + 1}`] : []));
    }),

  "every cell that a formula spills into is there and holds no formula": (parts) =>
    sheetPaths(parts).flatMap((path) => {
      const cells = new Map(storedCells(parts, path).map((cell) => [cell.at, cell]));
      const spilling = [...cells.values()].filter(({ formula }) => formula?.ref?.includes(":"));
      return spilling.flatMap(({ at, formula }) =>
        addressesIn(formula?.ref ?? at)
          .filter((each) => each !== at && (!cells.has(each) || cells.get(each)?.formula !== undefined))
          .map((each) => `${path} ${each}`),
      );
    }),

  "a table is as wide as its columns, and its header cells say the columns' names": (parts) =>
    tablePaths(parts).flatMap((path) => {
      const { cells, header, columns } = tableOf(parts, path);
      if (header.length !== columns.length) return [`${path}: ${columns.length} columns over ${header.length} cells`];
      return header.flatMap((at, i) => {
        const cell = cells.get(at);
        const name = columns[i]?.getAttribute("name");
        return cell !== undefined && shownText(parts, cell) === name ? [] : [`${path} ${at}: ${name ?? ""}`];
      });
    }),

  "a calculated column's cells hold the column's formula": (parts) =>
    tablePaths(parts).flatMap((path) => {
      const { cells, header, columns, lastRow } = tableOf(parts, path);
      return columns.flatMap((column, i) => {
        const formula = column.getElementsByTagName("calculatedColumnFormula")[0]?.textContent;
        const top = header[i];
        if (formula === undefined || formula === null || top === undefined) return [];
        const below = addressesIn(`${top}:${top.replace(/\d+/, String(lastRow))}`).slice(1);
        return below.filter((at) => cells.get(at)?.formula?.text !== formula).map((at) => `${path} ${at}`);
      });
    }),

  "every structured reference names a table and a column that exist": (parts) => {
    const known = new Set(tablePaths(parts).flatMap((path) => elements(parts, path, "tableColumn").map((column) => `${tableOf(parts, path).name}[${column.getAttribute("name") ?? ""}]`)));
    return formulas(parts).flatMap(({ at, formula }) =>
      [...formula.text.matchAll(/\b([A-Za-z_]\w*)\[(?:\[#This Row\],)?\[?([^[\]]+)\]\]?/g)]
        .map(([, table = "", column = ""]) => `${table}[${column}]`)
        .filter((reference) => !known.has(reference))
        .map((reference) => `${at}: ${reference}`),
    );
  },

  "every style and format a cell or rule points at is in styles.xml": (parts) => {
    const styles = elements(parts, "xl/styles.xml", "cellXfs")[0]?.getElementsByTagName("xf").length ?? 0;
    const looks = elements(parts, "xl/styles.xml", "dxf").length;
    return sheetPaths(parts).flatMap((path) => [
      ...elements(parts, path, "c").filter((cell) => !(Number(cell.getAttribute("s") ?? 0) < styles)).map((cell) => `${path} ${cell.getAttribute("r") ?? ""}`),
      ...elements(parts, path, "cfRule").filter((rule) => !(Number(rule.getAttribute("dxfId") ?? 0) < looks)).map(() => `${path} dxfId`),
    ]);
  },

  "every note has a hidden box on its own cell, which the sheet points at": (parts) =>
    Object.keys(parts).filter((path) => /^xl\/comments\d+\.xml$/.test(path)).flatMap((path) => {
      const number = /\d+/.exec(path)?.[0] ?? "";
      const noted = elements(parts, path, "comment").map((note) => note.getAttribute("ref") ?? "");
      const boxes = `xl/drawings/vmlDrawing${number}.vml`;
      const numbers = (name: string): number[] => elements(parts, boxes, name).map((each) => Number(each.textContent));
      const rows = numbers("x:Row");
      const boxed = numbers("x:Column").map((column, i) => address({ row: rows[i] ?? NaN, column }));
      const pointer = elements(parts, `xl/worksheets/sheet${number}.xml`, "legacyDrawing")[0]?.getAttribute("r:id");
      const related = elements(parts, `xl/worksheets/_rels/sheet${number}.xml.rels`, "Relationship").find((each) => each.getAttribute("Id") === pointer);
      const faults = noted.filter((at, i) => boxed[i] !== at).map((at) => `${path} ${at}`);
      return related?.getAttribute("Target") === boxes.replace("xl/", "../") ? faults : [...faults, `${path}: not pointed at`];
    }),

  "a list to choose from and a hint keep to the 255 characters that the host takes": (parts) =>
    sheetPaths(parts).flatMap((path) =>
      elements(parts, path, "dataValidation").flatMap((rule) => {
        const list = rule.getAttribute("type") === "list" ? (childText(rule, "formula1") ?? "") : "";
        const texts = [list.slice(1, -1), rule.getAttribute("prompt") ?? "", rule.getAttribute("error") ?? ""];
        return texts.some((text) => text.length > 255) ? [`${path} ${rule.getAttribute("sqref") ?? ""}`] : [];
      }),
    ),

  "no conditional format, validation or defined name calls one of our functions": (parts) => {
    const rules = sheetPaths(parts).flatMap((path) => ["formula", "formula1", "formula2"].flatMap((name) => elements(parts, path, name)));
    const names = elements(parts, "xl/workbook.xml", "definedName");
    return [...rules, ...names].map((each) => each.textContent ?? "").filter((text) => /_xldudf_|RUNOFF\./i.test(text));
  },
};

function tableOf(parts: Parts, path: string) {
  const table = elements(parts, path, "table")[0];
  const sheet = Object.keys(parts).find((each) => each.startsWith("xl/worksheets/_rels/") && parts[each]?.includes(path.replace("xl/", "../")));
  const sheetPath = sheet?.replace("_rels/", "").replace(".rels", "") ?? "";
  const [first, last] = corners(table?.getAttribute("ref") ?? "A1");
  const ref = table?.getAttribute("ref") ?? "A1";
  const headerRange = ref.replace(/\d+$/, String(first.row + 1));
  return {
    name: table?.getAttribute("displayName") ?? "",
    cells: new Map(storedCells(parts, sheetPath).map((cell) => [cell.at, cell])),
    header: addressesIn(headerRange),
    columns: elements(parts, path, "tableColumn"),
    lastRow: last.row + 1,
  };
}
