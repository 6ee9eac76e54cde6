import { answerWords } from "../words/page";
import { button } from "./elements";

/** What is answered to a press. */
export interface Answer {
  readonly words: string;
  readonly isProblem: boolean;
  /** The id of what was pressed; `undefined` when nobody pressed anything. */
  readonly at?: string | undefined;
  /** Takes back what was done. */
  readonly takeBack?: (() => void) | undefined;
}

/** What holds a control together with what belongs to it: the answer stands right after it. */
const holders = ".bar, .field, .aside li, .pots, fieldset, table, .picture";

/** The one answer of the moment: beside what was pressed, within view, and spoken once. */
export class AnswerLine {
  private answer: Answer = { words: "", isProblem: false };

  constructor(
    private readonly line: HTMLElement,
    /** Where it stands when what was pressed is gone, or nothing was pressed. */
    private readonly otherwiseAfter: HTMLElement,
    private readonly spoken: HTMLElement,
  ) {}

  show(answer: Answer): void {
    if (answer.words === "" && this.answer.words === "") return;
    this.answer = answer;
    const { words, takeBack } = answer;
    this.line.replaceChildren(
      words,
      ...(takeBack === undefined ? [] : [" ", button(answerWords.takeBack, takeBack, { id: "answer-back" })]),
    );
    this.line.dataset["tone"] = answer.isProblem ? "wait" : "calm";
    this.spoken.textContent = answer.words;
    this.place();
    if (answer.words !== "") this.line.scrollIntoView({ block: "nearest" });
  }

  /** While the page around it is shown anew the line is put where it belongs, and stays in view if it was. */
  around(show: () => void): void {
    const wasSeen = this.answer.words !== "" && this.isSeen();
    show();
    this.place();
    if (wasSeen) this.line.scrollIntoView({ block: "nearest" });
  }

  private isSeen(): boolean {
    const { top, bottom } = this.line.getBoundingClientRect();
    return bottom > 0 && top < innerHeight;
  }

  private place(): void {
    const pressed = this.answer.at === undefined ? null : document.getElementById(this.answer.at);
    const after = pressed?.closest(holders) ?? pressed ?? this.otherwiseAfter;
    if (after.nextElementSibling !== this.line) after.after(this.line);
  }
}
