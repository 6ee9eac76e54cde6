import { drawWashout } from "./drawing/washout-drawing";
import { flushOnSheet, type FlushOnSheet } from "./flush/flush-on-sheet";
import { washoutOf } from "./flush/washout-of";
import { type OwnSheet } from "./sheet/own-sheet";
import { writeEntries } from "./sheet/write-entries";
import { currentTheme } from "./theme";
import { type Answer } from "./view/answer-line";
import { ownNotice } from "./view/own-sheet";
import { type Draft, type FlushActions, flushSection } from "./view/flush";
import { h } from "./view/elements";
import { svgNode } from "./view/picture-node";
import { flushWords as words } from "./words/flush";
import { pageWords } from "./words/page";
import { SheetProblem } from "./workbook";

// What the pane shows while a sheet of ours is in view: a script of its own, loaded when there is one.

export interface FlushHost {
  readonly say: (answer: Answer) => void;
  readonly backToLog: () => void;
  /** Reads the days after, written on the sheet, as a log. */
  readonly readDays: () => void;
  /** Reads the sheet once more, after something was written on it. */
  readonly readAgain: () => Promise<void>;
}

/** A number as it is typed in a field: "5,8" can only be 5.8 there. */
function typedNumber(text: string, field: string): number {
  const tidy = text.trim().replace(",", ".");
  if (/^\d+(\.\d*)?$|^\.\d+$/.test(tidy)) return Number(tidy);
  throw new SheetProblem("selection", words.notANumber(field));
}

const timeOfDay = (now: Date): number => (now.getHours() * 60 + now.getMinutes()) / (24 * 60);

/** The flush sheet in view, and what was typed for it and not yet written. */
export class FlushPart implements FlushActions {
  private readonly draft: Draft = new Map();
  private own: OwnSheet | undefined;
  private flush: FlushOnSheet | undefined;

  constructor(private readonly host: FlushHost) {}

  section(own: OwnSheet, width: number): Node[] {
    const { kind } = own;
    if (kind !== "flush sheet") return ownNotice({ ...own, kind }, this);
    this.own = own;
    const flush = flushOnSheet(own.cells);
    this.flush = flush;
    const curve = (view: Parameters<typeof washoutOf>[1]): Node =>
      h(
        "div",
        { id: "washout", role: "img", aria: { label: words.curve } },
        svgNode(drawWashout(washoutOf(flush, view), width, currentTheme())),
      );
    return flushSection(flush, { own, draft: this.draft, actions: this, curve });
  }

  readonly backToLog = (): void => {
    this.host.backToLog();
  };
  readonly readDays = (): void => {
    this.host.readDays();
  };

  readonly writePot = (container: string, water: string): void => {
    this.carryOut("write-pot", words.planned, ({ containerLitres, waterEc, rows }) => [
      ...(containerLitres === undefined
        ? [{ row: rows.container, column: 1, values: [typedNumber(container, words.container)] }]
        : []),
      ...(waterEc === undefined ? [{ row: rows.water, column: 1, values: [typedNumber(water, words.water)] }] : []),
    ]);
  };

  readonly writePortion = (litres: string, ec: string, ph: string): void => {
    const written = words.written(this.flush?.nextPortion ?? 0, this.own?.sheetName ?? "");
    this.carryOut("write-portion", written, ({ rows: { next } }) => {
      if (next === undefined) throw new SheetProblem("filled", words.noRow);
      const [runoffEc, runoffPh, poured] = [
        typedNumber(ec, words.ec),
        typedNumber(ph, words.ph),
        typedNumber(litres, words.pouredNow),
      ];
      return [{ row: next, column: 1, values: [timeOfDay(new Date()), poured, runoffPh, runoffEc] }];
    });
  };

  private carryOut(
    at: string,
    done: string,
    entries: (flush: FlushOnSheet) => Parameters<typeof writeEntries>[1],
  ): void {
    const { own, flush, host } = this;
    if (own === undefined || flush === undefined) return;
    const work = async (): Promise<void> => {
      await writeEntries(own.sheetId, entries(flush));
      this.draft.clear();
      await host.readAgain();
      // Said by the next portion, which is what is looked for now, and never over the keys.
      document.getElementById("pour")?.scrollIntoView({ block: "nearest" });
      host.say({ words: done, isProblem: false, at: "pour" });
    };
    work().catch((problem: unknown) => {
      const known = problem instanceof SheetProblem;
      host.say({ words: known ? problem.message : pageWords.fault(String(problem)), isProblem: true, at });
      if (!known) throw problem;
    });
  }
}
