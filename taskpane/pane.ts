import { type Choices, forPot, type PotChoices } from "./choices";
import { daysOn } from "./days-on-sheet";
import { type Tool } from "./next-thing";
import { PaneReading } from "./pane-reading";
import { type RootZone } from "./root-zone";
import { followSelection, watchSheets, watchShown, watchViews } from "./sheet/follow";
import { cellsOfRow, goTo } from "./sheet/go-to";
import { type LogTab } from "./sheet/log-tabs";
import { type Actions } from "./view/actions";
import { rowsWords } from "./words/rows";

/** What a person can do in the pane: read, choose, follow, go to a cell, open what is next. */
export class Pane extends PaneReading implements Actions {
  private stopFollowing: (() => Promise<void>) | undefined;

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
    const { readSelection, rootZoneOf, keepChoices } = await this.page.logPart();
    const selection = await readSelection(place);
    const { columns, ...others } = change(rootZoneOf(selection, choices));
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
      const { keepChoices } = await this.page.logPart();
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

  /** From a sheet of ours to the log read last, or to the first log of the book where none was read yet. */
  readonly backToLog = (): void => {
    const { selection, logs: [first] } = this.state;
    this.become({ own: undefined });
    if (selection !== undefined) this.goToRow(selection.headerRows, "read");
    else if (first !== undefined) this.openLog(first);
  };

  readonly openLog = ({ sheetId, row, column }: LogTab): void => {
    this.say(rowsWords.reading, "open-log");
    void this.carryOut(async () => {
      await goTo(sheetId, row, column);
      this.readFor({ canWait: false }, "open-log");
    }, "open-log");
  };

  /** Reads the days after from a sheet of ours, as the log that they are. */
  readonly readDays = (): void => {
    const { own } = this.state;
    const place = own === undefined ? undefined : daysOn(own);
    if (place === undefined) return;
    this.become({ own: undefined });
    void this.carryOut(() => this.read(place, { canWait: false }), "read");
  };
}
