import { type Done } from "./sheet/done";
import { type Answer } from "./view/answer-line";
import { pageWords } from "./words/page";
import { SheetProblem } from "./workbook";

/** What the work on the sheet needs of the page around it. */
export interface QueueHost {
  readonly say: (answer: Answer) => void;
  readonly redraw: () => void;
  /** Once something was taken back. */
  readonly afterTakingBack: () => Promise<void>;
}

/** Actions on the sheet, one after the other: each says at its press what it did, and can be taken back, the last one first. */
export class WorkQueue {
  private readonly done: Done[] = [];
  private queue = Promise.resolve();

  constructor(private readonly host: QueueHost) {}

  get canTakeBack(): boolean { return this.done.length > 0; }

  /** `at` is the id of what was pressed. */
  carryOut(action: () => Promise<Done | undefined>, at: string): void {
    const turn = this.queue.then(() => this.tried(action, at)).finally(this.host.redraw);
    // A fault of ours is left to the page to report; the next action still has its turn.
    this.queue = turn.catch(() => undefined);
    void turn;
  }

  takeBack(at: string): void {
    this.carryOut(async () => {
      const last = this.done.at(-1);
      if (last === undefined) return undefined;
      const words = await last.takeBack();
      this.done.pop();
      await this.host.afterTakingBack();
      this.host.say({ words, isProblem: false, at });
      return undefined;
    }, at);
  }

  private async tried(action: () => Promise<Done | undefined>, at: string): Promise<void> {
    try {
      const done = await action();
      if (done === undefined) return;
      this.done.push(done);
      this.host.say({ words: done.words, isProblem: false, at, takeBack: () => { this.takeBack(at); } });
    } catch (problem) {
      const known = problem instanceof SheetProblem;
      this.host.say({ words: known ? problem.message : pageWords.fault(String(problem)), isProblem: true, at });
      if (!known) throw problem;
    }
  }
}
