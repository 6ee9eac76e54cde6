/** What one edition of the host offers: the highest version of each set of its interface; a set left out is not there. */
export interface Level {
  readonly name: string;
  readonly sets: Readonly<Record<string, string>>;
}

/** Sets that came with the oldest edition named here, and internal ones that the library asks for. */
const always = { AddinCommands: "1.1", DialogApi: "1.2", DelayForCellEdit: "1.1" };
const functions = (version: string): Level["sets"] => ({ SharedRuntime: "1.1", CustomFunctionsRuntime: version, CustomFunctions: "1.10" });

/**
 * Source: the host's own tables, "Excel JavaScript API requirement sets", "Custom functions requirement sets" and "Shared runtime
 * requirement sets" at learn.microsoft.com/javascript/api/requirement-sets, read on 26 November 2026. Excel 2019 stands no longer
 * in them: its row is from memory. Phones run no add-ins in Excel: they are left out here, and said in words where it matters.
 */
export const levels: readonly Level[] = [
  { name: "Excel 2019", sets: { ...always, ExcelApi: "1.8" } },
  { name: "Excel 2021", sets: { ...always, ExcelApi: "1.14", ...functions("1.3") } },
  { name: "Excel 2024", sets: { ...always, ExcelApi: "1.17", ...functions("1.3") } },
  { name: "Microsoft 365", sets: { ...always, ExcelApi: "1.20", ...functions("1.5") } },
  { name: "the web", sets: { ...always, ExcelApi: "1.20", ...functions("1.5") } },
  { name: "iPad", sets: { ...always, ExcelApi: "1.20" } },
];

/** What the workbench is unless a test or a person chooses otherwise. */
export const newest: Level["sets"] = { ...always, ExcelApi: "1.20", ...functions("1.5"), RibbonApi: "1.1" };
