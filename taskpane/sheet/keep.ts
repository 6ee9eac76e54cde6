import { inExcel, offers } from "../workbook";
import { type SheetSelection } from "./read-selection";
import { wholly } from "./wholly";

/** The name under which a sheet, or else the workbook, keeps what a person answered; it travels with the file. */
const keptName = "RunoffLedger.answers";

/**
 * Sheets keep texts of their own, and take them along when they are renamed, copied or moved, from this part of the
 * interface on.
 */
const sheetSet = "1.12";

type Kept = Readonly<Record<string, unknown>>;
type Log = Pick<SheetSelection, "sheetId" | "sheetName">;

const parsed = (text: unknown): Kept => {
  if (typeof text !== "string") return {};
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? (value as Kept) : {};
  } catch {
    return {};
  }
};

/**
 * Ids of sheets change from host to host and with each opening: where sheets keep nothing themselves, the name stands
 * for the sheet.
 */
const keyIn = ({ sheetName }: Log, key: string): string => (offers(sheetSet) ? key : `${sheetName} ${key}`);

function askKept(context: Excel.RequestContext, { sheetId }: Log): Excel.WorksheetCustomProperty | Excel.Setting {
  return offers(sheetSet)
    ? context.workbook.worksheets.getItem(sheetId).customProperties.getItemOrNullObject(keptName).load("value")
    : context.workbook.settings.getItemOrNullObject(keptName).load("value");
}

/** What was kept for a log under a key, or `undefined`. */
export const kept = (log: Log, key: string): Promise<unknown> =>
  inExcel(async (context) => {
    const found = askKept(context, log);
    await context.sync();
    const all = found.isNullObject ? {} : parsed(found.value);
    return Object.hasOwn(all, keyIn(log, key)) ? all[keyIn(log, key)] : undefined;
  });

/** Keeps a value for a log under a key, beside what is kept under others. */
export const keep = (log: Log, key: string, value: unknown): Promise<void> =>
  inExcel(async (context) => {
    const found = askKept(context, log);
    await context.sync();
    const before = found.isNullObject ? undefined : String(found.value);
    const text = JSON.stringify({ ...parsed(before), [keyIn(log, key)]: value });
    await wholly(context, {
      where: `the answers kept with ${log.sheetName}`,
      write: () => { put(context, log, text); },
      putBack: async (again) => {
        if (before === undefined) askKept(again, log).delete();
        else put(again, log, before);
        await again.sync();
      },
    });
  }, { canWait: true });

function put(context: Excel.RequestContext, { sheetId }: Log, text: string): void {
  if (offers(sheetSet)) context.workbook.worksheets.getItem(sheetId).customProperties.add(keptName, text);
  else context.workbook.settings.add(keptName, text);
}
