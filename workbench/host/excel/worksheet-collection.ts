import { Collection } from "./collection";
import { changedArgs, EventHandlers } from "./events";
import { HostError } from "./host-error";
import type { RequestContext } from "./request-context";
import { sheetCalled } from "./sheet-access";
import { assertSheetName, type Worksheet } from "./worksheet";

/** The sheets of the workbook. */
export class WorksheetCollection extends Collection<Worksheet, string> {
  readonly onChanged = new EventHandlers(this.context, changedArgs);
  readonly onActivated = new EventHandlers(this.context, (event) =>
    event.kind === "activated" ? { type: "WorksheetActivated", worksheetId: event.sheetId } : undefined);
  readonly onCalculated = new EventHandlers(this.context, (event) =>
    event.kind === "calculated" ? { type: "WorksheetCalculated", worksheetId: event.sheetId } : undefined);

  constructor(context: RequestContext) {
    super(context, () => true);
  }

  getActiveWorksheet(): Worksheet {
    return this.context.make.worksheet(this.context, () => this.context.store.activeSheetId());
  }

  getItem(nameOrId: string): Worksheet {
    return this.context.make.worksheet(this.context, () => sheetCalled(this.context, nameOrId));
  }

  getItemOrNullObject(nameOrId: string): Worksheet {
    return this.context.make.worksheet(this.context, () => sheetCalled(this.context, nameOrId), true);
  }

  getFirst(): Worksheet {
    return this.context.make.worksheet(this.context, () => this.keys()[0]);
  }

  /** A new sheet at the end; it is not activated. */
  add(name?: string): Worksheet {
    let made: string | undefined;
    this.write(() => {
      const given = name ?? this.freeName();
      assertSheetName(given);
      if (sheetCalled(this.context, given) !== undefined) throw new HostError("ItemAlreadyExists", given);
      made = this.context.store.addSheet(given);
    });
    return this.context.make.worksheet(this.context, () => made);
  }

  protected override keys(): readonly string[] {
    return this.context.store.sheets().map(({ id }) => id);
  }

  protected override itemFor(id: string): Worksheet {
    return this.context.make.worksheet(this.context, () => id);
  }

  private freeName(): string {
    let number = this.keys().length + 1;
    while (sheetCalled(this.context, `Sheet${number}`) !== undefined) number += 1;
    return `Sheet${number}`;
  }
}
