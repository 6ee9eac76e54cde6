import { type Choices } from "./choices";
import { type RootZone } from "./root-zone";
import { type Done } from "./sheet/done";
import { functionsState, type FunctionsState } from "./sheet/functions-alive";
import { type QueueHost, WorkQueue } from "./work-queue";
import { SheetProblem } from "./workbook";

/** What the work on the sheet needs of the pane around it. */
export interface WorkHost extends Pick<QueueHost, "say" | "redraw"> {
  /** Looks whether a sheet of ours is in view now. */
  readonly lookAtSheet: () => Promise<void>;
  readonly goToCell: (row: number, column: number, at: string) => void;
  readonly readAfterWriting: (change?: (zone: RootZone) => Partial<Choices>) => Promise<void>;
}

/** How work on the sheet is carried out: one step after another, on the log that was read. */
export class SheetWorkCore {
  protected zone: RootZone | undefined;
  protected functions: FunctionsState | undefined;
  protected readonly queue: WorkQueue;

  constructor(protected readonly host: WorkHost) {
    const afterTakingBack = async (): Promise<void> => {
      await host.lookAtSheet();
      await host.readAfterWriting();
      await this.countFunctions();
    };
    this.queue = new WorkQueue({ say: host.say, redraw: host.redraw, afterTakingBack });
  }

  protected async countFunctions(): Promise<void> { this.functions = await functionsState(); }

  /** An action after which there are more or fewer formulas. */
  protected counting(at: string, action: () => Promise<Done>): void {
    this.queue.carryOut(action, at, () => this.countFunctions());
  }

  /** An action on the log that was read. */
  protected onLog(
    at: string,
    action: (zone: RootZone) => Promise<Done | undefined>,
    after?: () => Promise<void>,
  ): void {
    const onZone = (): Promise<Done | undefined> => {
      if (this.zone === undefined) throw new SheetProblem("selection");
      return action(this.zone);
    };
    this.queue.carryOut(onZone, at, after);
  }
}
