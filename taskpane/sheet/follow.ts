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

/**
 * Calls back with the sheet whose cells changed, or whose formulas were calculated; a cell being edited is waited for.
 */
export const watchSheets = (
  onChange: (sheetId: string) => void,
  onCalculated: (sheetId: string) => void,
): Promise<void> =>
  inExcel(
    async (context) => {
      const { worksheets } = context.workbook;
      worksheets.onChanged.add(({ worksheetId }) => settled(onChange, worksheetId));
      worksheets.onCalculated.add(({ worksheetId }) => settled(onCalculated, worksheetId));
      await context.sync();
    },
    { canWait: true },
  );

/** Calls back when the pane is closed and when it is shown again: its script runs on meanwhile. */
export async function watchShown(onShown: (isShown: boolean) => void): Promise<void> {
  if (!Office.context.requirements.isSetSupported("SharedRuntime", "1.1")) return;
  await Office.addin.onVisibilityModeChanged(({ visibilityMode }) => {
    onShown(visibilityMode === Office.VisibilityMode.taskpane);
  });
}

/** Calls back with the sheet that came into view. */
export const watchViews = (onShow: (sheetId: string) => void): Promise<void> =>
  inExcel(async (context) => {
    context.workbook.worksheets.onActivated.add(({ worksheetId }) => settled(onShow, worksheetId));
    await context.sync();
  });

const timers = new Map<unknown, ReturnType<typeof setTimeout>>();

/** Calls once the same call has not been asked for again for a moment. */
function settled<Given extends unknown[]>(call: (...given: Given) => void, ...given: Given): Promise<void> {
  clearTimeout(timers.get(call));
  timers.set(call, setTimeout(call, quietMilliseconds, ...given));
  return Promise.resolve();
}
