import type { Dependencies } from "./engine-sheet";

/**
 * The formulas that depend on themselves, or on one that does: the engine would go round once and show a number that means
 * nothing. Found by taking away, again and again, every formula that waits for no other.
 */
export function circularFormulas(all: readonly Dependencies[]): Dependencies[] {
  const waitsFor = new Map(all.map(({ formula, readsFrom }) => [formula, new Set(readsFrom)]));
  const readBy = new Map<number, number[]>();
  for (const { formula, readsFrom } of all) for (const read of readsFrom) readBy.set(read, [...(readBy.get(read) ?? []), formula]);
  const ready = all.filter(({ readsFrom }) => readsFrom.length === 0).map(({ formula }) => formula);
  for (let next = ready.pop(); next !== undefined; next = ready.pop()) {
    waitsFor.delete(next);
    for (const reader of readBy.get(next) ?? []) {
      const waiting = waitsFor.get(reader);
      if (waiting?.delete(next) === true && waiting.size === 0) ready.push(reader);
    }
  }
  return all.filter(({ formula }) => waitsFor.has(formula));
}
