import { inExcel } from "../workbook";

/** Waits until a burst of events has ended, so that dragging a selection, or filling down, is read once. */
const quietMilliseconds = 250;

type Stop = () => Promise<void>;

/** Calls back when the selection moves; answers how to stop. */
export const followSelection = (onMove: () => void): Promise<Stop> =>
  inExcel(async (context) => {
    const handler = context.workbook.onSelectionChanged.add(() => settled(onMove));
    await context.sync();
    return () => inExcel(async () => {
      handler.remove();
      await handler.context.sync();
    });
  });

/** Calls back with the sheet whose cells changed. */
export const watchChanges = (onChange: (sheetId: string) => void): Promise<void> =>
  inExcel(async (context) => {
    context.workbook.worksheets.onChanged.add(({ worksheetId }) => settled(onChange, worksheetId));
    await context.sync();
  });

const timers = new Map<unknown, ReturnType<typeof setTimeout>>();

/** Calls once the same call has not been asked for again for a moment. */
function settled<Given extends unknown[]>(call: (...given: Given) => void, ...given: Given): Promise<void> {
  clearTimeout(timers.get(call));
  timers.set(call, setTimeout(call, quietMilliseconds, ...given));
  return Promise.resolve();
}
