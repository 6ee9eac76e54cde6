import type * as LogPart from "./log-part";
import { type Tool } from "./next-thing";
import { freshPane, type PaneState } from "./pane-state";
import { type RootZone } from "./root-zone";
import { type Answer } from "./view/answer-line";
import { pageWords } from "./words/page";
import { SheetProblem } from "./workbook";

/** What the pane asks of the page around it. */
export interface PanePage {
  readonly render: (state: PaneState) => void;
  readonly say: (answer: Answer) => void;
  readonly open: (tool: Tool, zone: RootZone) => void;
  readonly placeTimeline: (zone: RootZone) => Promise<string>;
  /** What reads and judges a log, once its script is here. */
  readonly logPart: () => Promise<typeof LogPart>;
}

/** The pane's one state, how it is shown, and how what goes wrong is said. */
export class PaneCore {
  protected state: PaneState = freshPane;

  constructor(protected readonly page: PanePage) {}

  /** Shows the present state again, after a change of width or theme. */
  readonly redraw = (): void => { this.page.render(this.state); };

  protected become(change: Partial<PaneState>): void {
    this.state = { ...this.state, ...change };
    this.page.render(this.state);
  }

  /** `at` is the id of what was pressed. */
  protected say(words: string, at?: string): void { this.page.say({ words, isProblem: false, at }); }

  /** Carries out what was asked for; what is in the way is said beside the press. */
  protected async carryOut(action: () => Promise<void>, at?: string): Promise<void> {
    try {
      await action();
    } catch (problem) {
      const known = problem instanceof SheetProblem;
      this.page.say({ words: known ? problem.message : pageWords.fault(String(problem)), isProblem: true, at });
      if (!known) throw problem;
    }
  }
}
