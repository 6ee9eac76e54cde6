import { cellRef } from "hucre";
import type { CellValue } from "../host/functions-host";
import { type Area, isMany, keyOf } from "./areas";
import type { DirectAnswer } from "./direct-calls";
import type { EngineAnswer, EngineCell, EngineSheet } from "./engine-sheet";

type Direct = ReadonlyMap<string, DirectAnswer>;

/** The engine's answer with the direct ones laid over it. */
export function withDirect(engine: EngineAnswer, direct: Direct): EngineAnswer {
  const values = new Map<string, CellValue>();
  const spills = new Map<string, Area>();
  for (const { sheet, area } of direct.values()) if (isMany(area)) spills.set(keyOf(sheet, cellRef(area.startRow, area.startCol)), area);
  for (const { sheet, address, value } of cellsOf(direct)) values.set(keyOf(sheet, address), value);
  return {
    dependencies: engine.dependencies,
    valueAt: (sheet, row, column) => {
      const key = keyOf(sheet, cellRef(row, column));
      return values.has(key) ? values.get(key) : engine.valueAt(sheet, row, column);
    },
    spillFrom: (sheet, row, column) => spills.get(keyOf(sheet, cellRef(row, column))) ?? engine.spillFrom(sheet, row, column),
  };
}

/** Sheets for the engine, in which direct answers that spill fill the free cells beside their formula. */
export function withSpills(sheets: readonly EngineSheet[], direct: Direct, refused: ReadonlyMap<string, unknown>): EngineSheet[] {
  const spilling = new Map([...direct].filter(([key, { area }]) => isMany(area) && !refused.has(key)));
  if (spilling.size === 0) return [...sheets];
  const taken = sheets.map(({ cells }) => new Set(cells.map(({ address }) => address)));
  const added = sheets.map((): EngineCell[] => []);
  for (const cell of cellsOf(spilling)) if (taken[cell.sheet]?.has(cell.address) === false) added[cell.sheet]?.push(cell);
  return sheets.map(({ name, cells }, n) => ({ name, cells: [...cells, ...(added[n] ?? [])] }));
}

function* cellsOf(direct: Direct): Generator<EngineCell & { readonly sheet: number }> {
  for (const { sheet, area, values } of direct.values()) {
    for (const [down, line] of values.entries()) {
      for (const [across, value] of line.entries()) {
        const [row, column] = [area.startRow + down, area.startCol + across];
        yield { sheet, row, column, address: cellRef(row, column), value };
      }
    }
  }
}
