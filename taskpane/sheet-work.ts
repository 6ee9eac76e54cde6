import { type Choices } from "./choices";
import { compensatedColumns, flagHeader } from "./formulas/computed-columns";
import { ecFromNewColumns, offersFor, optionsFor } from "./formulas/offers";
import { type RootZone } from "./root-zone";
import { addColumns } from "./sheet/add-columns";
import { type Done } from "./sheet/done";
import { extendColumns } from "./sheet/extend-columns";
import { functionsState, type FunctionsState, reenter } from "./sheet/functions-alive";
import { markRows, removeMarks } from "./sheet/mark-rows";
import { addSheet } from "./sheet/new-sheet";
import { keepValuesOnly } from "./sheet/values-only";
import { flushSheet } from "./templates/flush-sheet";
import { mixSheet } from "./templates/mix-sheet";
import { sheetWorkSection, type WorkActions } from "./view/sheet-work";
import { SheetProblem } from "./workbook";

/** What the work on the sheet needs of the pane around it. */
export interface WorkHost {
  readonly say: (words: string, isProblem: boolean) => void;
  readonly redraw: () => void;
  readonly readAfterWriting: (change?: (zone: RootZone) => Partial<Choices>) => Promise<void>;
}

/** The pane's work on the sheet: what is ticked, what was done and can be taken back. Loaded when it is first opened. */
export class SheetWork implements WorkActions {
  private zone: RootZone | undefined;
  private readonly host: WorkHost;
  private readonly done: Done[] = [];
  private ticked: ReadonlySet<string> = new Set(["Salt ratio", flagHeader]);
  private uncompensated = false;
  private functions: FunctionsState | undefined;
  private isAsking = false;
  private queue = Promise.resolve();

  constructor(host: WorkHost) {
    this.host = host;
    this.checkFunctions();
  }

  section(zone: RootZone | undefined): Node[] {
    this.zone = zone;
    const { ticked, uncompensated, functions, isAsking } = this;
    const offers = zone === undefined ? [] : offersFor(zone, this.uncompensated);
    return sheetWorkSection({
      offers, ticked, uncompensated, functions, isAsking,
      inTable: zone?.selection.tableName !== undefined, canTakeBack: this.done.length > 0,
    }, this);
  }

  readonly tick = (header: string, on: boolean): void => {
    this.ticked = new Set([...this.ticked].filter((each) => each !== header).concat(on ? [header] : []));
  };

  readonly compensate = (on: boolean): void => {
    this.uncompensated = on;
    this.ticked = new Set([...this.ticked, ...Object.values(compensatedColumns).map(({ header }) => header)]);
    this.host.redraw();
  };

  readonly addColumns = (): void => {
    this.onLog(async (zone) => {
      const wanted = offersFor(zone, this.uncompensated).filter(({ column, missing }) => missing === undefined && this.ticked.has(column.header));
      if (wanted.length === 0) throw new SheetProblem("selection", "Tick a column that is not there yet and that the log has the readings for.");
      const done = await addColumns(zone, wanted.map(({ column }) => column), optionsFor(zone, this.uncompensated));
      this.uncompensated = false;
      await this.host.readAfterWriting(ecFromNewColumns);
      return done;
    }, true);
  };

  readonly extend = (): void => { this.onLog(extendColumns); };
  readonly mark = (): void => { this.onLog(markRows); };
  readonly newMixSheet = (): void => { this.carryOut(() => addSheet(mixSheet)); };
  readonly newFlushSheet = (): void => { this.carryOut(() => addSheet(flushSheet)); };
  readonly reenter = (): void => { this.carryOut(reenter, true); };

  readonly unmark = (): void => {
    this.onLog(async ({ selection }) => {
      this.host.say(await removeMarks(selection.sheetId), false);
      return undefined;
    });
  };

  readonly checkFunctions = (): void => {
    this.carryOut(() => Promise.resolve(undefined), true);
  };

  readonly askValuesOnly = (asking: boolean): void => {
    this.isAsking = asking;
    this.host.redraw();
  };

  readonly valuesOnly = (): void => {
    this.isAsking = false;
    this.carryOut(keepValuesOnly, true);
  };

  readonly takeBack = (): void => {
    this.carryOut(async () => {
      const last = this.done.pop();
      if (last === undefined) return undefined;
      const words = await last.takeBack();
      await this.host.readAfterWriting();
      this.host.say(words, false);
      return undefined;
    }, true);
  };

  private onLog(action: (zone: RootZone) => Promise<Done | undefined>, countsFunctions = false): void {
    this.carryOut(() => {
      if (this.zone === undefined) throw new SheetProblem("selection");
      return action(this.zone);
    }, countsFunctions);
  }

  /** One action after the other: its words are said, and its way back is kept. */
  private carryOut(action: () => Promise<Done | undefined>, countsFunctions = false): void {
    const turn = this.queue.then(() => this.tried(action, countsFunctions)).finally(this.host.redraw);
    // A fault of ours is left to the page to report; the next action still has its turn.
    this.queue = turn.catch(() => undefined);
    void turn;
  }

  private async tried(action: () => Promise<Done | undefined>, countsFunctions: boolean): Promise<void> {
    try {
      const done = await action();
      if (done !== undefined) {
        this.done.push(done);
        this.host.say(done.words, false);
      }
      if (countsFunctions) this.functions = await functionsState();
    } catch (problem) {
      if (!(problem instanceof SheetProblem)) throw problem;
      this.host.say(problem.message, true);
    }
  }
}
