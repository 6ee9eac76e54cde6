import { type Choices } from "./choices";
import { type FlushPart } from "./flush-part";
import { LazyPart } from "./lazy-part";
import { type Tool } from "./next-thing";
import { Pane } from "./pane";
import { type PaneState } from "./pane-state";
import { type RootZone } from "./root-zone";
import { type SheetWork } from "./sheet-work";
import { type OwnSheet } from "./sheet/own-sheet";
import { startProblem } from "./start-problem";
import { applyTheme, currentTheme, watchTheme } from "./theme";
import { type Answer, AnswerLine } from "./view/answer-line";
import { button, h, type Part, showAll } from "./view/elements";
import { unlessPressed } from "./view/presses";
import { rowsSection } from "./view/rows";
import { pageWords } from "./words/page";
import { SheetProblem } from "./workbook";

const place = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no place ${id}`);
  return found;
};

/** The narrowest pane that the host offers, less the page's margins. */
const narrowest = 296;
const pictureWidth = (): number => Math.max(narrowest, place("standing").clientWidth);

const answerLine = new AnswerLine(place("said"), place("rows"), place("spoken"));
const say = (answer: Answer): void => { answerLine.show(answer); };
const log = new LazyPart(() => import(/* webpackChunkName: "log" */ "./log-part"));
const picture = new LazyPart(async () => (await log.get()).picturePart());
const pane = new Pane({
  logPart: () => log.get().catch(() => { throw new SheetProblem("unknown", pageWords.notLoaded); }),
  render: (state) => { unlessPressed(() => { render(state); }); },
  say,
  open,
  placeTimeline: async (zone) => (await picture.get()).placeTimeline(zone),
});
const sheetWork = new LazyPart(async (): Promise<SheetWork> => {
  const { SheetWork: Work } = await (await log.get()).workPart();
  return new Work({
    say,
    redraw: pane.redraw,
    readAfterWriting: pane.readAfterWriting,
    lookAtSheet: () => pane.lookAt(),
    goToCell: pane.goToCell,
  });
});

const flush = new LazyPart(async (): Promise<FlushPart> => {
  const { FlushPart: Part } = await (await log.get()).flushPart();
  return new Part({ say, backToLog: pane.backToLog, readDays: pane.readDays, readAgain: () => pane.lookAt() });
});

/** The parts of the page that speak of a log: empty while a sheet of our own is in view. */
const logParts = ["questions", "pots", "settings", "picture", "work", "columns", "aside", "limits"].map(place);

function render(state: PaneState): void {
  answerLine.around(() => { showAll(partsOf(state)); });
  const { own, zone } = state;
  if (own === undefined && zone !== undefined) tell("told", log.here?.standingInWords(zone) ?? "");
}

/** What each part of the page shows. */
function partsOf({ zone, choices, following, logs, selection, own }: PaneState): readonly Part[] {
  if (own !== undefined) {
    const empty = [place("rows"), place("logs"), ...logParts].map((part): Part => [part, []]);
    return [...empty, [place("standing"), flushOf(own)], [place("work"), sheetWork.here?.backBar() ?? []]];
  }
  const { here } = log;
  const always: readonly Part[] = [
    [place("rows"), rowsSection(zone && here?.rowsRead(zone), following, pane)],
    [place("logs"), here?.logsSection(logs, selection?.sheetId, pane) ?? []],
    [place("work"), workSection(zone)],
  ];
  if (zone === undefined || here === undefined) return always;
  const ofLog = Object.entries(here.logParts(zone, choices, pane)).map(([id, shown]): Part => [place(id), shown]);
  return [...always, ...ofLog, [place("picture"), pictureOf(zone, choices)]];
}

/** A line that is read out only when it says something new. */
function tell(id: string, words: string): void {
  if (place(id).textContent !== words) place(id).textContent = words;
}

/** The sheet of ours in view, once the script for it is here. */
function flushOf(own: OwnSheet): Node[] {
  const { here } = flush;
  if (here !== undefined) return here.section(own, pictureWidth());
  flush.get().then(pane.redraw, () => { say({ words: pageWords.notLoaded, isProblem: true }); });
  return [];
}

/** The picture, once its script is here; until then the page does without. */
function pictureOf(zone: RootZone, choices: Choices): Node[] {
  const { here } = picture;
  if (here !== undefined)
    return here.pictureSection(zone, { choices, width: pictureWidth(), theme: currentTheme(), actions: pane });
  picture.get().then(pane.redraw, () => {
    place("picture").replaceChildren(h("p", { className: "why" }, pageWords.notLoaded));
  });
  return [];
}

function workSection(zone: RootZone | undefined): Node[] {
  const { here } = sheetWork;
  if (here !== undefined) return here.section(zone);
  return [h("div", { className: "bar" }, button(pageWords.work, () => void openWork(), { id: "open-work" }))];
}

async function openWork(): Promise<void> {
  const work = await loadedWork("open-work");
  if (work !== undefined) pane.redraw();
}

/** Opens what carries out the next step of the course. */
function open(tool: Tool, zone: RootZone): void {
  void loadedWork("next-thing").then((work) => { work?.open(tool, zone); });
}

async function loadedWork(at: string): Promise<SheetWork | undefined> {
  try {
    return await sheetWork.get();
  } catch {
    say({ words: pageWords.notLoaded, isProblem: true, at });
    return undefined;
  }
}

async function start(): Promise<void> {
  applyTheme();
  // Fetched while the host answers; what goes wrong is said when a log is read.
  log.get().catch(() => undefined);
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
