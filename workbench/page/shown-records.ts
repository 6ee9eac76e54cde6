import { RemoveDefinedNameMutation } from "@univerjs/engine-formula";
import { SetFrozenMutation } from "@univerjs/sheets";
import type { BookRecords } from "../host/excel/book-records";
import { freezeOf } from "./book-data";
import { showConditionalFormats } from "./conditional-formats";
import { defineName } from "./defined-names";
import type { Grid } from "./grid";
import { sheetChange, type SheetChange } from "./sheet-change";
import { showValidations } from "./validations";

type Show<Item> = (change: SheetChange, shown: readonly string[], items: readonly Item[]) => string[];

/** Keeps the grid to what belongs to the workbook beside its cells: formats that depend on values, limits, frozen panes, names. */
export class ShownRecords {
  private readonly last = new Map<string, string>();
  private readonly shown = new Map<string, readonly string[]>();
  private names: readonly string[] = [];

  constructor(
    private readonly grid: Grid,
    private readonly records: BookRecords,
  ) {}

  /** Shows what has changed since the last time. */
  show(sheetIds: readonly string[]): void {
    for (const id of sheetIds) {
      const change = sheetChange(this.grid, id);
      const on = ({ area }: { readonly area: { readonly sheetId: string } }): boolean => area.sheetId === id;
      this.list("formats", change, this.records.conditionalFormats.filter(on), showConditionalFormats);
      this.list("validations", change, this.records.validations.filter(on), showValidations);
      this.frozen(change);
    }
    this.defineNames();
  }

  private list<Item>(kind: string, change: SheetChange, items: readonly Item[], show: Show<Item>): void {
    const key = `${kind} ${change.sheetId}`;
    if (!this.isNew(key, items, "[]")) return;
    this.shown.set(key, show(change, this.shown.get(key) ?? [], items));
  }

  private frozen({ run, sheetId }: SheetChange): void {
    const { frozen } = this.records.sheet(sheetId);
    if (this.isNew(`frozen ${sheetId}`, frozen.rows, "0")) run(SetFrozenMutation.id, freezeOf(frozen));
  }

  private defineNames(): void {
    const { names } = this.records;
    if (!this.isNew("names", names, "[]")) return;
    const gone = this.names.filter((name) => !names.some((each) => each.name === name));
    for (const name of gone) sheetChange(this.grid, "").run(RemoveDefinedNameMutation.id, { id: name, name });
    for (const { name, formula } of names) defineName(this.grid, name, formula.replace(/^=/, ""));
    this.names = names.map(({ name }) => name);
  }

  private isNew(key: string, state: unknown, atFirst: string): boolean {
    const text = JSON.stringify(state);
    if ((this.last.get(key) ?? atFirst) === text) return false;
    this.last.set(key, text);
    return true;
  }
}
