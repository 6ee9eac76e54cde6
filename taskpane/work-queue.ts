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

/**
 * Actions on the sheet, one after the other: each says at its press what it did, and can be taken back, the last one
 * first.
 */
export class WorkQueue {
  private readonly done: Done[] = [];
  private queue = Promise.resolve();

  constructor(private readonly host: QueueHost) {}

  get canTakeBack(): boolean { return this.done.length > 0; }

  /**
   * `at` is the id of what was pressed; `after` looks at what the action made of the sheet. What was done is said, and
   * has its way back, before anything else can fail.
   */
  carryOut(action: () => Promise<Done | undefined>, at: string, after: () => Promise<void> = nothingMore): void {
    // A fault in drawing is left to the page to report; the next action still has its turn.
    this.queue = this.queue.catch(() => undefined).then(() => this.tried(action, at, after)).then(this.host.redraw);
  }

  takeBack(at: string): void {
    const turn = async (): Promise<undefined> => {
      const last = this.done.at(-1);
      if (last === undefined) return undefined;
      const words = await last.takeBack();
      this.done.pop();
      await this.saying({ words, isProblem: false, at }, this.host.afterTakingBack);
      return undefined;
    };
    this.carryOut(turn, at);
  }

  private async tried(action: () => Promise<Done | undefined>, at: string, after: () => Promise<void>): Promise<void> {
    try {
      const done = await action();
      if (done === undefined) {
        await after();
        return;
      }
      this.done.push(done);
      await this.saying({ words: done.words, isProblem: false, at, takeBack: () => { this.takeBack(at); } }, after);
    } catch (problem) {
      const known = problem instanceof SheetProblem;
      if (known && problem.takeBack !== undefined)
        this.done.push({ words: problem.message, takeBack: problem.takeBack });
      this.host.say({ words: known ? problem.message : pageWords.fault(String(problem)), isProblem: true, at });
    }
  }

  /** Says what was done, and then looks at it: where that fails, what was done stays said. */
  private async saying(answer: Answer, look: () => Promise<void>): Promise<void> {
    this.host.say(answer);
    try {
      await look();
    } catch {
      this.host.say({ ...answer, words: `${answer.words} ${pageWords.notReadAgain}` });
    }
  }
}

const nothingMore = (): Promise<void> => Promise.resolve();
