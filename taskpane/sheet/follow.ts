import { inExcel } from "../workbook";

/** Waits until a burst of events has ended, so that dragging a selection reads it once. */
const quietMilliseconds = 250;

/** Calls back when the selection moves, and when a cell of any sheet changes; answers how to stop. */
export async function follow(onSelection: () => void, onChange: () => void): Promise<() => Promise<void>> {
  const handlers = await inExcel(async (context) => {
    const selection = context.workbook.onSelectionChanged.add(settled(onSelection));
    const change = context.workbook.worksheets.onChanged.add(settled(onChange));
    await context.sync();
    return [selection, change];
  });
  return async () => {
    await inExcel(async (context) => {
      for (const handler of handlers) handler.remove();
      await context.sync();
    });
  };
}

function settled(call: () => void): () => Promise<void> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(call, quietMilliseconds);
    return Promise.resolve();
  };
}
