import { cellRef } from "hucre";
import type { Book } from "../book";
import type { CellValue } from "../host/functions-host";
import { isMany, keyOf } from "./areas";
import type { DirectAnswer } from "./direct-calls";
import type { EngineAnswer, EngineCell, EngineSheet } from "./engine-sheet";

type Direct = ReadonlyMap<string, DirectAnswer>;

/** The engine's answer with the direct ones laid over it; a cell with a formula of its own keeps its own answer under a blocked spill. */
export function withDirect(engine: EngineAnswer, direct: Direct, book: Book): EngineAnswer {
  const spilling = new Map([...direct].filter(([, { area }]) => isMany(area)));
  const spilled = new Map<string, CellValue>();
  for (const { sheet, address, value } of cellsOf(spilling)) {
    if (book.sheets[sheet]?.cells.get(address)?.formula === undefined) spilled.set(keyOf(sheet, address), value);
  }
  return {
    dependencies: engine.dependencies,
    valueAt: (sheet, row, column) => {
      const key = keyOf(sheet, cellRef(row, column));
      const answer = direct.get(key);
      if (answer !== undefined) return answer.values[0]?.[0];
      return spilled.has(key) ? spilled.get(key) : engine.valueAt(sheet, row, column);
    },
    spillFrom: (sheet, row, column) => spilling.get(keyOf(sheet, cellRef(row, column)))?.area ?? engine.spillFrom(sheet, row, column),
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
