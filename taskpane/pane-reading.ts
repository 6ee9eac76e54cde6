import { mayBeOwn, ownKind } from "./own-kind";
import { PaneCore } from "./pane-core";
import { goTo } from "./sheet/go-to";
import { readOwnSheet } from "./sheet/own-sheet";
import { type SheetSelection } from "./sheet/read-selection";
import { selectedPlace, type SheetPlace } from "./sheet/selected-place";
import { rowsWords } from "./words/rows";
import { type Haste } from "./workbook";

/** From so many rows on the page shows that it reads before it does: weighing them takes more than a blink. */
const longLogRows = 5000;
/** Long enough for the page to show its words. */
const paint = (): Promise<unknown> => new Promise((resolve) => setTimeout(resolve, 40));
const retryMilliseconds = 250;

/**
 * How the pane reads: what was asked for last counts, what the person wants comes first, and a long log is announced.
 */
export class PaneReading extends PaneCore {
  /** What the pane itself selected: not a place that the person wants read. */
  private selectedByPane = "";
  /** The number of the reading begun last, and how many that the person asked for are under way. */
  private readings = 0;
  private asked = 0;
  private isShown = true;

  /** Looks at a sheet, or the one in view: one of our own is shown as what it is. */
  readonly lookAt = async (sheetId?: string): Promise<void> => {
    const own = await readOwnSheet({ mayBe: mayBeOwn, kindOf: ownKind }, sheetId);
    if (own !== undefined || this.state.own !== undefined) this.become({ own });
  };

  /** Reads what the person has selected; what the pane itself has selected is no wish to read it. */
  protected readFor(haste: Haste, at: string): void {
    this.asked += 1;
    void this.carryOut(async () => {
      const place = await selectedPlace();
      await this.lookAt(place.sheetId);
      const isNew = !haste.canWait || JSON.stringify(place) !== this.selectedByPane;
      if (this.state.own === undefined && isNew) await this.read(place, haste);
      this.say("");
    }, at).finally(() => {
      this.asked -= 1;
      if (!haste.canWait) void this.findLogs();
    });
  }

  /** The logs of the book, so that one is a press away; looked for after what was asked is shown. */
  private async findLogs(): Promise<void> {
    // A script that is missing was told of by the reading that asked for it.
    const part = await this.page.logPart().catch(() => undefined);
    if (part === undefined) return;
    await this.carryOut(async () => {
      const logs = await part.logTabs();
      if (JSON.stringify(logs) !== JSON.stringify(this.state.logs)) this.become({ logs });
    });
  }

  /** Formulas have answered that had not when the sheet was read. */
  protected readonly readAnswers = (sheetId: string): void => {
    if ((this.state.selection?.waiting ?? 0) > 0) this.readAgain(sheetId);
  };

  /** The pane's script runs on while it is closed: what changed meanwhile is read when it is shown again. */
  protected readonly shown = (isShown: boolean): void => {
    this.isShown = isShown;
    const { place } = this.state;
    if (isShown && place !== undefined) this.readAgain(place.sheetId);
  };

  /** Reads again what was read last; it waits while the person's own wish is carried out. */
  protected readonly readAgain = (sheetId: string): void => {
    const { place, own } = this.state;
    if (!this.isShown) return;
    if (this.asked > 0) setTimeout(this.readAgain, retryMilliseconds, sheetId);
    else if (own?.sheetId === sheetId) void this.carryOut(() => this.lookAt(sheetId));
    else if (place?.sheetId === sheetId) void this.carryOut(() => this.read(place, { canWait: true }));
  };

  protected async select(...cells: Parameters<typeof goTo>): Promise<void> {
    this.selectedByPane = JSON.stringify(await goTo(...cells));
  }

  /** Reads a place; when a later reading has begun meanwhile, that one counts. */
  protected async read(place: SheetPlace, haste: Haste): Promise<void> {
    const reading = ++this.readings;
    const { readSelection, choicesFor } = await this.page.logPart();
    const selection = await readSelection(place, haste);
    const choices = place === this.state.place ? this.state.choices : await choicesFor(selection, this.state);
    if (reading !== this.readings) return;
    this.state = { ...this.state, choices };
    await this.weigh(selection, place);
  }

  /** Works out all that the pane shows; a long log lets the page say so first. */
  protected async weigh(selection: SheetSelection, place: SheetPlace | undefined): Promise<void> {
    const rows = selection.rowNumbers.length;
    if (rows >= longLogRows) {
      this.say(rowsWords.readingRows(rows), "read");
      await paint();
    }
    const { choices, zone } = this.state;
    const { rootZoneOf } = await this.page.logPart();
    const judged = rootZoneOf(selection, choices, zone);
    if (choices === this.state.choices) this.become({ place, selection, zone: judged });
    if (rows >= longLogRows) this.say("");
  }
}
