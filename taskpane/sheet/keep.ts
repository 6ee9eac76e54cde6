import { inExcel } from "../workbook";

/** The one setting of the workbook under which the pane keeps what a person answered; it travels with the file. */
const settingName = "RunoffLedger.answers";

type Kept = Readonly<Record<string, unknown>>;

const parsed = (text: unknown): Kept => {
  if (typeof text !== "string") return {};
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? (value as Kept) : {};
  } catch {
    return {};
  }
};

/** What was kept under a key, or `undefined`. */
export const kept = (key: string): Promise<unknown> =>
  inExcel(async (context) => {
    const setting = context.workbook.settings.getItemOrNullObject(settingName).load("value");
    await context.sync();
    return setting.isNullObject ? undefined : parsed(setting.value)[key];
  });

/** Keeps a value under a key beside what is kept under others. */
export const keep = (key: string, value: unknown): Promise<void> =>
  inExcel(async (context) => {
    const setting = context.workbook.settings.getItemOrNullObject(settingName).load("value");
    await context.sync();
    const all = setting.isNullObject ? {} : parsed(setting.value);
    context.workbook.settings.add(settingName, JSON.stringify({ ...all, [key]: value }));
    await context.sync();
  });
