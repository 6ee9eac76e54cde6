import { type Choices, noChoices } from "./choices";
import { headersOf, type RootZone, rootZoneOf } from "./root-zone";
import { follow } from "./sheet/follow";
import { goTo } from "./sheet/go-to";
import { keep, kept } from "./sheet/keep";
import { placePicture } from "./sheet/place-picture";
import { readSelection, type SheetSelection } from "./sheet/read-selection";
import { drawTimeline } from "./drawing/timeline-drawing";
import { currentTheme } from "./theme";
import { type Actions } from "./view/actions";
import { pictureTitle } from "./view/picture";
import { SheetProblem } from "./workbook";

/** The width at which the picture is placed on the sheet, in pixels. */
const sheetPictureWidth = 640;

export interface PaneState {
  readonly selection: SheetSelection | undefined;
  readonly choices: Choices;
  readonly zone: RootZone | undefined;
  readonly following: boolean;
}

/** The pane's one state and what changes it; `render` shows a state, `say` speaks a line to the person. */
export class Pane implements Actions {
  private state: PaneState = { selection: undefined, choices: noChoices, zone: undefined, following: false };
  private stopFollowing: (() => Promise<void>) | undefined;
  private readonly render: (state: PaneState) => void;
  private readonly say: (words: string, isProblem: boolean) => void;

  constructor(render: (state: PaneState) => void, say: (words: string, isProblem: boolean) => void) {
    this.render = render;
    this.say = say;
  }

  /** Shows the present state again, after a change of width or theme. */
  readonly redraw = (): void => {
    this.render(this.state);
  };

  readonly readSelection = (): void => {
    void this.carryOut(async () => {
      const selection = await readSelection();
      const choices = await this.choicesFor(selection);
      this.become({ ...this.state, selection, choices, zone: rootZoneOf(selection, choices) });
      this.say("", false);
    });
  };

  /** After the pane itself wrote beside the log, so that its headers changed: what was chosen stays chosen, and `change` is added. */
  readonly readAfterWriting = async (change: (zone: RootZone) => Partial<Choices> = () => ({})): Promise<void> => {
    const { selection: before, choices } = this.state;
    if (before === undefined) return;
    const selection = await readSelection();
    if (selection.sheetId !== before.sheetId) return;
    const { columns, ...others } = change(rootZoneOf(selection, choices));
    const now = { ...choices, ...others, columns: { ...choices.columns, ...columns } };
    this.become({ ...this.state, selection, choices: now, zone: rootZoneOf(selection, now) });
    await keep(keyOf(selection), now);
  };

  /** Reads the log again where it was read before: a cell has changed. */
  readonly follow = (on: boolean): void => {
    void this.carryOut(async () => {
      await this.stopFollowing?.();
      this.stopFollowing = on ? await follow(this.readSelection, this.readSelection) : undefined;
      this.become({ ...this.state, following: on });
      if (on) this.readSelection();
    });
  };

  readonly choose = (change: Partial<Choices>): void => {
    const { selection } = this.state;
    if (selection === undefined) return;
    const choices = { ...this.state.choices, ...change };
    this.become({ ...this.state, choices, zone: rootZoneOf(selection, choices) });
    void this.carryOut(() => keep(keyOf(selection), choices));
  };

  readonly goToCell = (row: number, column: number): void => {
    const { selection } = this.state;
    if (selection !== undefined) void this.carryOut(() => goTo(selection.sheetId, row, column));
  };

  readonly goToRow = (row: number): void => {
    const { selection } = this.state;
    if (selection === undefined) return;
    const { sheetId, rowNumbers, columnNumbers } = selection;
    const [first = 0] = columnNumbers;
    const width = (columnNumbers.at(-1) ?? first) - first + 1;
    void this.carryOut(() => goTo(sheetId, rowNumbers[row] ?? row, first, width));
  };

  readonly placePicture = (): void => {
    const { zone } = this.state;
    if (zone === undefined) return;
    void this.carryOut(async () => {
      const theme = currentTheme() === "contrast" ? "light" : currentTheme();
      const drawing = drawTimeline(zone.timeline, { width: sheetPictureWidth, theme, title: pictureTitle(zone) });
      const address = await placePicture(zone.selection.sheetId, drawing);
      this.say(`Placed the timeline on ${zone.selection.sheetName} at ${address}, beside everything that is filled.`, false);
    });
  };

  private become(state: PaneState): void {
    this.state = state;
    this.render(state);
  }

  /** What was chosen for this log before: the same while the log is the same, else what the workbook keeps. */
  private async choicesFor(selection: SheetSelection): Promise<Choices> {
    const { selection: before, choices } = this.state;
    if (before !== undefined && keyOf(before) === keyOf(selection)) return choices;
    const remembered = (await kept(keyOf(selection))) as Partial<Choices> | undefined;
    return { ...noChoices, ...remembered };
  }

  private async carryOut(action: () => Promise<void>): Promise<void> {
    try {
      await action();
    } catch (problem) {
      if (!(problem instanceof SheetProblem)) throw problem;
      this.say(problem.message, true);
    }
  }
}

/** Answers belong to a sheet and its headers. */
const keyOf = (selection: SheetSelection): string => `${selection.sheetId} ${headersOf(selection).join(" | ")}`;
