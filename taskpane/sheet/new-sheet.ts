import { type SheetTemplate } from "../templates/sheet-template";
import { SheetProblem, writingInExcel } from "../workbook";
import { type Done } from "./done";
import { type AsWritten, removeSheet } from "./remove-sheet";
import { wholly } from "./wholly";
import { type Made, writeTemplate } from "./write-template";

/** Writes a template on a new sheet at the end of the workbook, under a name that is free; all of it in one sync. */
export const addSheet = (template: SheetTemplate): Promise<Done> =>
  writingInExcel(async (context) => {
    const name = await freeName(context, template.name);
    let made: Made | undefined;
    await wholly(context, {
      where: `the sheet ${name}`,
      write: () => { made = writeTemplate(context, template, name); },
      putBack: async (again) => {
        const sheet = again.workbook.worksheets.getItemOrNullObject(name).load("id");
        await again.sync();
        if (sheet.isNullObject) return;
        sheet.delete();
        await again.sync();
      },
    });
    const { id, asWritten } = asMade(made, template);
    return { words: `Made the sheet ${name}. Nothing else was touched.`, takeBack: () => removeSheet(id, asWritten) };
  });

function asMade(
  made: Made | undefined,
  { rows, widths }: SheetTemplate,
): { readonly id: string; readonly asWritten: AsWritten } {
  if (made === undefined) throw new SheetProblem("unknown");
  const isFilled = rows.map((row) =>
    widths.map((_, column) => row[column]?.value !== undefined || row[column]?.formula !== undefined),
  );
  return { id: made.sheet.id, asWritten: { cells: made.block.formulas as unknown[][], isFilled } };
}

async function freeName(context: Excel.RequestContext, wanted: string): Promise<string> {
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  const taken = new Set(sheets.items.map(({ name }) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? wanted : `${wanted} ${number}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}
