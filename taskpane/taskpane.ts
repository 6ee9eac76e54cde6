import { Pane, type PaneState } from "./pane";
import { type SheetWork } from "./sheet-work";
import { currentTheme, watchTheme } from "./theme";
import { columnsSection } from "./view/columns";
import { button, show } from "./view/elements";
import { pictureSection } from "./view/picture";
import { questionsSection } from "./view/questions";
import { rowsSection } from "./view/rows";
import { setAsideSection } from "./view/set-aside";
import { settingsSection } from "./view/settings";
import { standingSection } from "./view/standing";

const place = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no place ${id}`);
  return found;
};

/** The narrowest pane that the host offers. */
const narrowest = 320;
const pictureWidth = (): number => Math.max(narrowest - 24, place("picture").clientWidth);

const pane = new Pane(render, say);
let work: SheetWork | undefined;

function render({ zone, choices, following }: PaneState): void {
  show(place("rows"), ...rowsSection(zone, following, pane));
  show(place("settings"), ...(zone === undefined ? [] : settingsSection(zone, choices, pane)));
  show(place("questions"), ...(zone === undefined ? [] : questionsSection(zone, choices, pane)));
  show(place("standing"), ...(zone === undefined ? [] : standingSection(zone)));
  show(place("picture"), ...(zone === undefined ? [] : pictureSection(zone, { width: pictureWidth(), theme: currentTheme(), actions: pane })));
  show(place("columns"), ...(zone === undefined ? [] : columnsSection(zone, choices, pane)));
  show(place("work"), ...(work === undefined ? [button("Work on the sheet", () => void openWork(), { id: "open-work" })] : work.section(zone)));
  show(place("aside"), ...(zone === undefined ? [] : setAsideSection(zone, pane)));
}

/** The work on the sheet is a script of its own, so that the pane opens sooner. */
async function openWork(): Promise<void> {
  try {
    const loaded = await import(/* webpackChunkName: "sheet-work" */ "./sheet-work");
    work ??= new loaded.SheetWork({ say, redraw: pane.redraw, readAfterWriting: pane.readAfterWriting });
    pane.redraw();
  } catch {
    say("This part of the pane could not be loaded. Try again when the network is back.", true);
  }
}

function say(words: string, isProblem: boolean): void {
  const line = place("said");
  line.textContent = words;
  line.dataset["tone"] = isProblem ? "wait" : "calm";
}

/** The host's script may be missing (no network, stale cache) or speak of another host: the page says so. */
async function start(): Promise<void> {
  const host = (globalThis as { Office?: typeof Office }).Office;
  const info = await host?.onReady();
  if (info?.host !== host?.HostType.Excel || info === undefined) {
    say("This page is the task pane of Runoff Ledger: open it from the ribbon of Excel. If you did, Excel's own script could not be loaded; try again when the network is back.", true);
    return;
  }
  watchTheme(pane.redraw);
  new ResizeObserver(pane.redraw).observe(document.documentElement);
  pane.readSelection();
}

void start();
