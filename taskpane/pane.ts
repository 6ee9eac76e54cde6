import { type Choices, forPot, type PotChoices } from "./choices";
import { isFlushSheet, mayBeFlush } from "./flush/is-flush-sheet";
import { choicesFor, keepChoices } from "./kept-choices";
import { type Tool } from "./next-thing";
import { PaneCore } from "./pane-core";
import { type RootZone } from "./root-zone";
import { followSelection, watchSheets, watchShown, watchViews } from "./sheet/follow";
import { cellsOfRow, goTo } from "./sheet/go-to";
import { readOwnSheet } from "./sheet/own-sheet";
import { readSelection, type SheetSelection } from "./sheet/read-selection";
import { selectedPlace, type SheetPlace } from "./sheet/selected-place";
import { type Actions } from "./view/actions";
import { rowsWords } from "./words/rows";
import { type Haste } from "./workbook";

/** From so many rows on the page shows that it reads before it does: weighing them takes more than a blink. */
const longLogRows = 5000;
/** Long enough for the page to show its words. */
const paint = (): Promise<unknown> => new Promise((resolve) => setTimeout(resolve, 40));
const retryMilliseconds = 250;

/** What changes the pane's state: reading, choosing, following, and the sheet that is in view. */
export class Pane extends PaneCore implements Actions {
  private stopFollowing: (() => Promise<void>) | undefined;
  /** What the pane itself selected: not a place that the person wants read. */
  private selectedByPane = "";
  /** The number of the reading begun last, and how many that the person asked for are under way. */
  private readings = 0;
  private asked = 0;
  private isShown = true;

  /** Reads what is selected, and again whenever a cell of that sheet changes or another sheet comes into view. */
  readonly start = (): void => {
    void this.carryOut(() => watchSheets(this.readAgain, this.readAnswers));
    void this.carryOut(() => watchViews((sheetId) => { void this.carryOut(() => this.lookAt(sheetId)); }));
    void this.carryOut(() => watchShown(this.shown));
    this.readSelection();
  };

  readonly readSelection = (): void => {
    this.say(rowsWords.reading, "read");
    this.readFor({ canWait: false }, "read");
  };

  /**
   * After the pane itself wrote beside the log, so that its headers changed: what was chosen stays chosen, and `change`
   * is added.
   */
  readonly readAfterWriting = async (change: (zone: RootZone) => Partial<Choices> = () => ({})): Promise<void> => {
    const { place, choices } = this.state;
    if (place === undefined) return;
    const selection = await readSelection(place);
    const { columns, ...others } = change(await this.page.judged(selection, choices));
    this.state = { ...this.state, choices: { ...choices, ...others, columns: { ...choices.columns, ...columns } } };
    await this.weigh(selection, place);
    await keepChoices(selection, this.state.choices);
  };

  readonly follow = (on: boolean): void => {
    void this.carryOut(async () => {
      await this.stopFollowing?.();
      this.stopFollowing = on ? await followSelection(() => { this.readFor({ canWait: true }, "follow"); }) : undefined;
      this.become({ following: on });
      if (on) this.readFor({ canWait: true }, "follow");
    }, "follow");
  };

  readonly choose = (change: Partial<Choices>): void => {
    const { selection, choices: before } = this.state;
    if (selection === undefined) return;
    const choices = { ...before, ...change };
    this.state = { ...this.state, choices };
    void this.carryOut(async () => {
      await this.weigh(selection, this.state.place);
      await keepChoices(selection, choices);
    });
  };

  readonly chooseForPot = (change: Partial<PotChoices>): void => {
    const { choices, zone } = this.state;
    this.choose(forPot(choices, zone?.vessel, change));
  };

  readonly goToCell = (row: number, column: number, at: string): void => {
    const { selection } = this.state;
    if (selection !== undefined) void this.carryOut(() => this.select(selection.sheetId, row, column), at);
  };

  readonly goToRow = (row: number, at: string): void => {
    const { selection } = this.state;
    if (selection !== undefined) void this.carryOut(() => this.select(...cellsOfRow(selection, row)), at);
  };

  readonly placePicture = (): void => {
    const { zone } = this.state;
    if (zone !== undefined)
      void this.carryOut(async () => {
        this.say(await this.page.placeTimeline(zone), "place");
      }, "place");
  };

  readonly open = (tool: Tool): void => {
    const { zone } = this.state;
    if (zone !== undefined) this.page.open(tool, zone);
  };

  /** Looks at a sheet, or the one in view: one of our own is shown as what it is. Answers whether it is one. */
  readonly lookAt = async (sheetId?: string): Promise<void> => {
    const own = await readOwnSheet(isFlushSheet, mayBeFlush, sheetId);
    if (own !== undefined || this.state.own !== undefined) this.become({ own });
  };

  readonly backToLog = (): void => {
    const { selection } = this.state;
    this.become({ own: undefined });
    if (selection !== undefined) this.goToRow(selection.headerRows, "read");
  };

  /** Reads what the person has selected; what the pane itself has selected is no wish to read it. */
  private readFor(haste: Haste, at: string): void {
    this.asked += 1;
    void this.carryOut(async () => {
      const place = await selectedPlace();
      await this.lookAt(place.sheetId);
      const isNew = !haste.canWait || JSON.stringify(place) !== this.selectedByPane;
      if (this.state.own === undefined && isNew) await this.read(place, haste);
      this.say("");
    }, at).finally(() => { this.asked -= 1; });
  }

  /** Formulas have answered that had not when the sheet was read. */
  private readonly readAnswers = (sheetId: string): void => {
    if ((this.state.selection?.waiting ?? 0) > 0) this.readAgain(sheetId);
  };

  /** The pane's script runs on while it is closed: what changed meanwhile is read when it is shown again. */
  private readonly shown = (isShown: boolean): void => {
    this.isShown = isShown;
    const { place } = this.state;
    if (isShown && place !== undefined) this.readAgain(place.sheetId);
  };

  /** Reads again what was read last; it waits while the person's own wish is carried out. */
  private readonly readAgain = (sheetId: string): void => {
    const { place, own } = this.state;
    if (!this.isShown) return;
    if (this.asked > 0) setTimeout(this.readAgain, retryMilliseconds, sheetId);
    else if (own?.sheetId === sheetId) void this.carryOut(() => this.lookAt(sheetId));
    else if (place?.sheetId === sheetId) void this.carryOut(() => this.read(place, { canWait: true }));
  };

  private async select(...cells: Parameters<typeof goTo>): Promise<void> {
    this.selectedByPane = JSON.stringify(await goTo(...cells));
  }

  /** Reads a place; when a later reading has begun meanwhile, that one counts. */
  private async read(place: SheetPlace, haste: Haste): Promise<void> {
    const reading = ++this.readings;
    const selection = await readSelection(place, haste);
    const choices = place === this.state.place ? this.state.choices : await choicesFor(selection, this.state);
    if (reading !== this.readings) return;
    this.state = { ...this.state, choices };
    await this.weigh(selection, place);
  }

  /** Works out all that the pane shows; a long log lets the page say so first. */
  private async weigh(selection: SheetSelection, place: SheetPlace | undefined): Promise<void> {
    const rows = selection.rowNumbers.length;
    if (rows >= longLogRows) {
      this.say(rowsWords.readingRows(rows), "read");
      await paint();
    }
    const { choices, zone } = this.state;
    const judged = await this.page.judged(selection, choices, zone);
    if (choices === this.state.choices) this.become({ place, selection, zone: judged });
    if (rows >= longLogRows) this.say("");
  }
}
