import { Pane } from "./pane";
import { type PaneState } from "./pane-state";
import { type RootZone } from "./root-zone";
import { type SheetWork } from "./sheet-work";
import { startProblem } from "./start-problem";
import { applyTheme, currentTheme, watchTheme } from "./theme";
import { columnsSection } from "./view/columns";
import { button, showAll } from "./view/elements";
import { pictureSection } from "./view/picture";
import { unlessPressed } from "./view/presses";
import { questionsSection } from "./view/questions";
import { rowsSection } from "./view/rows";
import { setAsideSection } from "./view/set-aside";
import { limitsSection, settingsSection } from "./view/settings";
import { standingInWords, standingSection } from "./view/standing";

const place = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no place ${id}`);
  return found;
};

/** The narrowest pane that the host offers, less the page's margins. */
const narrowest = 296;
const pictureWidth = (): number => Math.max(narrowest, place("rows").clientWidth);

const pane = new Pane((state) => { unlessPressed(() => { render(state); }); }, say);
let work: SheetWork | undefined;

function render({ zone, choices, following }: PaneState): void {
  const always = [[place("rows"), rowsSection(zone, following, pane)], [place("work"), workSection(zone)]] as const;
  if (zone === undefined) {
    showAll(always);
    return;
  }
  showAll([
    ...always,
    [place("questions"), questionsSection(zone, choices, pane)],
    [place("settings"), settingsSection(zone, choices, pane)],
    [place("standing"), standingSection(zone)],
    [place("picture"), pictureSection(zone, { width: pictureWidth(), theme: currentTheme(), actions: pane })],
    [place("columns"), columnsSection(zone, choices, pane)],
    [place("aside"), setAsideSection(zone, pane)],
    [place("limits"), limitsSection(zone, choices, pane)],
  ]);
  tell("told", standingInWords(zone));
}

/** A line that is read out only when it says something new. */
function tell(id: string, words: string): void {
  if (place(id).textContent !== words) place(id).textContent = words;
}

const workSection = (zone: RootZone | undefined): Node[] =>
  work === undefined ? [button("Work on the sheet", () => void openWork(), { id: "open-work" })] : work.section(zone);

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
  place("said").dataset["tone"] = isProblem ? "wait" : "calm";
  tell("said", words);
}

async function start(): Promise<void> {
  applyTheme();
  const { inTheWay, words } = await startProblem();
  tell("notice", words);
  if (inTheWay) return;
  watchTheme(pane.redraw);
  let width = 0;
  new ResizeObserver(() => {
    if (width === pictureWidth()) return;
    width = pictureWidth();
    pane.redraw();
  }).observe(document.documentElement);
  pane.start();
}

void start();
