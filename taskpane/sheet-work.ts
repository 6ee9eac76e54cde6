import { compensatedColumns, flagHeader, type FormulaKind } from "./formulas/computed-columns";
import { ecFromNewColumns, offersFor, optionsFor } from "./formulas/offers";
import { plantColumns } from "./formulas/plant-columns";
import { sheetFor } from "./made-sheets";
import { type SheetTool, type Tool } from "./next-thing";
import { type RootZone } from "./root-zone";
import { SheetWorkCore, type WorkHost } from "./sheet-work-core";
import { addColumns, putColumns } from "./sheet/add-columns";
import { extendColumns } from "./sheet/extend-columns";
import { reenter } from "./sheet/functions-alive";
import { markRows, removeMarks } from "./sheet/mark-rows";
import { addSheet } from "./sheet/new-sheet";
import { nextRow } from "./sheet/next-row";
import { turnColumns } from "./sheet/turn-columns";
import { keepValuesOnly } from "./sheet/values-only";
import { newSheetId, sheetWorkSection, takeBackBar } from "./view/sheet-work";
import { type WorkActions } from "./view/work-state";
import { workWords } from "./words/sheet-work";
import { SheetProblem } from "./workbook";

/**
 * The pane's work on the sheet: what is ticked, what was done and can be taken back. Loaded when it is first opened.
 */
export class SheetWork extends SheetWorkCore implements WorkActions {
  private ticked: ReadonlySet<string> = new Set(["Salt ratio", flagHeader]);
  private uncompensated = false;
  private kind: FormulaKind = "functions";
  private isAsking = false;

  constructor(host: WorkHost) {
    super(host);
    this.checkFunctions();
  }

  section(zone: RootZone | undefined): Node[] {
    this.zone = zone;
    const { ticked, uncompensated, kind, functions, isAsking } = this;
    const offers = zone === undefined ? [] : offersFor(zone, this.uncompensated);
    return sheetWorkSection({
      offers, ticked, uncompensated, kind, functions, isAsking,
      inTable: zone?.selection.tableName !== undefined, canTakeBack: this.queue.canTakeBack,
    }, this);
  }

  /** The way back from the last step, for where nothing else of the work is shown. */
  backBar(): Node[] { return takeBackBar(this.queue.canTakeBack, this); }

  readonly tick = (header: string, on: boolean): void => {
    this.ticked = new Set([...this.ticked].filter((each) => each !== header).concat(on ? [header] : []));
  };

  readonly compensate = (on: boolean): void => {
    this.uncompensated = on;
    this.ticked = new Set([...this.ticked, ...Object.values(compensatedColumns).map(({ header }) => header)]);
    this.host.redraw();
  };

  readonly choose = (kind: FormulaKind): void => {
    this.kind = kind;
    this.host.redraw();
  };

  readonly turnColumns = (): void => {
    this.onLog("turn-columns", (zone) => turnColumns(zone, this.kind), () => this.countFunctions());
  };

  readonly addColumns = (): void => {
    this.onLog("add-columns", async (zone) => {
      const wanted = offersFor(zone, this.uncompensated).filter(
        ({ column, missing }) => missing === undefined && this.ticked.has(column.header),
      );
      if (wanted.length === 0) throw new SheetProblem("selection", workWords.tickFirst);
      const options = { ...optionsFor(zone, this.uncompensated), kind: this.kind };
      const done = await addColumns(zone, wanted.map(({ column }) => column), options);
      this.uncompensated = false;
      return done;
    }, async () => {
      await this.host.readAfterWriting(ecFromNewColumns);
      await this.countFunctions();
    });
  };

  readonly addPlantColumns = (): void => { this.addPlant("plant-columns"); };

  private addPlant(at: string): void {
    this.onLog(at, (zone) => {
      const columns = plantColumns(zone.reading);
      if (columns.length === 0) throw new SheetProblem("selection", workWords.plantThere);
      return putColumns(zone, columns);
    }, () => this.host.readAfterWriting());
  }

  readonly extend = (): void => { this.onLog("extend", extendColumns); };
  readonly mark = (): void => { this.onLog("mark", markRows); };
  readonly newSheet = (tool: SheetTool): void => {
    this.queue.carryOut(() => addSheet(sheetFor(tool)), newSheetId(tool), this.host.lookAtSheet);
  };

  readonly takeBack = (): void => { this.queue.takeBack("take-back"); };

  readonly unmark = (): void => { this.onLog("unmark", ({ selection }) => removeMarks(selection.sheetId)); };

  readonly checkFunctions = (): void => {
    this.queue.carryOut(() => Promise.resolve(undefined), "check-functions", () => this.countFunctions());
  };

  readonly reenter = (): void => { this.counting("reenter", reenter); };

  readonly askValuesOnly = (asking: boolean): void => {
    this.isAsking = asking;
    this.host.redraw();
  };

  readonly valuesOnly = (): void => {
    this.isAsking = false;
    this.counting("check-functions", keepValuesOnly);
  };

  /** Opens what carries out a step of the course: a sheet made from the pot, or the place in its log. */
  open(tool: Tool, zone: RootZone): void {
    this.zone = zone;
    if (tool === "plant columns" && plantColumns(zone.reading).length > 0) this.addPlant("next-thing");
    else if (tool === "next row" || tool === "plant columns") this.goToNextRow();
    else this.queue.carryOut(() => addSheet(sheetFor(tool, zone)), "next-thing", this.host.lookAtSheet);
  }

  private goToNextRow(): void {
    this.onLog("next-thing", async (zone) => {
      const { row, column, words } = await nextRow(zone);
      this.host.goToCell(row, column, "next-thing");
      this.host.say({ words, isProblem: false, at: "next-thing" });
      return undefined;
    });
  }
}
