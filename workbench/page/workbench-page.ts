import type { Book } from "../book";
import type { UniverFunction } from "../engine/univer-functions";
import { DocumentBridge } from "../host/client/bridge";
import { greet, themes } from "../host/client/office";
import { startGrid, type Grid } from "./grid";
import { fillRecords, openWorkbook } from "./open-workbook";
import { Overlay } from "./overlay";
import type { ThemeName } from "./page-state";
import type { PaneFrame } from "./pane-frame";
import { functionsMissing, pretend } from "./pretence";
import { UniverStore } from "./univer-store";

/** The grid checks what is typed on other sheets when the page is idle: only after that can it be taken away without a fault. */
const idle = (): Promise<void> => new Promise((resolve) => { requestIdleCallback(() => { resolve(); }); });

/** The grid with a workbook in it, and the pane that sees it. */
export class WorkbenchPage {
  private grid: Grid | undefined;
  private store: UniverStore | undefined;
  private book: Book | undefined;
  private lacksFunctions = false;

  constructor(
    private readonly container: HTMLElement,
    private readonly functions: readonly UniverFunction[],
    private readonly pane: PaneFrame,
    private theme: ThemeName,
  ) {}

  /** Shows a book in a fresh grid, in place of the one that is open; changes to that one are gone. */
  async show(book: Book, functions = this.functions): Promise<void> {
    this.book = book;
    this.lacksFunctions = functions !== this.functions;
    this.pane.close();
    if (this.grid !== undefined) await idle();
    this.grid?.univer.dispose();
    this.container.replaceChildren();
    const grid = startGrid(this.container, functions, this.theme === "dark");
    const computed = openWorkbook(grid, book);
    const store = new UniverStore(grid, book.names);
    this.grid = grid;
    this.store = store;
    fillRecords(store, book);
    const opened = computed.then(() => { store.showRecords(); });
    this.link(store, opened);
    // The pane loads while the grid computes, and is answered after that.
    this.pane.open();
    await opened;
    new Overlay(grid.api, store.records, (listener) => store.subscribe(listener));
  }

  private link(store: UniverStore, opened: Promise<void>): void {
    let bridge: DocumentBridge | undefined;
    window.runoffLedgerWorkbench = {
      store,
      openBridge: () => {
        bridge?.close();
        bridge = new DocumentBridge(store, opened);
        return bridge;
      },
      recalculate: () => store.recalculate(),
      greet: (pane) => { greet(pane, store, () => themes[this.theme]); },
    };
  }

  /** The host tells its theme when a pane loads: it is loaded anew. */
  setTheme(theme: ThemeName): void {
    this.theme = theme;
    this.grid?.api.toggleDarkMode(theme === "dark");
    this.store?.endUndoGroups();
    this.pane.open();
  }

  /** Puts the host into a trouble; whether functions are loaded is settled when a workbook opens, so it is opened anew. */
  async pretend(pretence: string): Promise<void> {
    if (this.book === undefined) return;
    const lacksFunctions = pretence === functionsMissing;
    if (lacksFunctions !== this.lacksFunctions) await this.show(this.book, lacksFunctions ? [] : this.functions);
    if (this.store !== undefined) pretend(this.store, pretence);
  }

  async recalculate(): Promise<void> {
    await this.store?.recalculate();
  }
}
