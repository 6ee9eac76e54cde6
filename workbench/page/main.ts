import type { Book } from "../book";
import { blankDeliveries, type BlankDelivery } from "../host/functions-host";
import { builtFunctions } from "./built-functions";
import { bookFrom, sampleBook, sampleNames } from "./open-book";
import "./page.css";
import { offer, part, say } from "./page-parts";
import { addressWith, choicesIn, type Choices, type ThemeName } from "./page-state";
import { PaneFrame } from "./pane-frame";
import { pretences } from "./pretence";
import { hintFor, inMenu, usualSample } from "./samples";
import { WorkbenchPage } from "./workbench-page";

let choices = choicesIn(location.href);

function choose(change: Partial<Choices>): void {
  choices = { ...choices, ...change };
  history.replaceState(undefined, "", addressWith(location.href, change));
}

/** What to try with the workbook that is open. */
function hint(text: string): void {
  part("hint", HTMLElement).textContent = text === "" ? "" : `To try: ${text}`;
}

/** Runs what a person asked for and says in words when it fails. */
function attempt(work: () => Promise<void>): void {
  say("");
  work().catch((problem: unknown) => { say(problem instanceof Error ? problem.message : String(problem)); });
}

function applyTheme(theme: ThemeName): void {
  document.documentElement.dataset["theme"] = theme;
  part("theme", HTMLButtonElement).textContent = theme === "dark" ? "Light theme" : "Dark theme";
}

/** A workbook just opened is in no trouble. */
async function show(page: WorkbenchPage, book: Book): Promise<void> {
  await page.show(book);
  part("pretend", HTMLSelectElement).selectedIndex = 0;
}

function wire(page: WorkbenchPage): void {
  const sample = part("sample", HTMLSelectElement);
  sample.addEventListener("change", () => {
    choose({ sample: sample.value });
    hint(hintFor(sample.value));
    attempt(async () => { await show(page, await sampleBook(sample.value)); });
  });
  const blank = part("blank", HTMLSelectElement);
  blank.addEventListener("change", () => {
    choose({ blank: blank.value as BlankDelivery });
    attempt(() => page.recalculate());
  });
  const trouble = part("pretend", HTMLSelectElement);
  offer(trouble, pretences, undefined);
  trouble.addEventListener("change", () => { attempt(() => page.pretend(trouble.value)); });
  part("theme", HTMLButtonElement).addEventListener("click", () => {
    choose({ theme: choices.theme === "dark" ? "light" : "dark" });
    applyTheme(choices.theme);
    page.setTheme(choices.theme);
  });
  const file = part("file", HTMLInputElement);
  file.addEventListener("change", () => {
    const [picked] = file.files ?? [];
    if (picked === undefined) return;
    hint("");
    attempt(async () => { await show(page, await bookFrom(picked.name, new Uint8Array(await picked.arrayBuffer()))); });
  });
}

async function start(): Promise<void> {
  applyTheme(choices.theme);
  const functions = builtFunctions(() => choices.blank);
  const samples = await sampleNames();
  const name = choices.sample ?? (samples.includes(usualSample) ? usualSample : (samples[0] ?? ""));
  const book = sampleBook(name);
  offer(part("sample", HTMLSelectElement), inMenu(samples), name);
  hint(hintFor(name));
  offer(part("blank", HTMLSelectElement), Object.keys(blankDeliveries), choices.blank);
  const pane = new PaneFrame(part("pane", HTMLIFrameElement), part("edge", HTMLElement));
  const page = new WorkbenchPage(part("grid", HTMLElement), await functions, pane, choices.theme);
  wire(page);
  await page.show(await book);
  document.documentElement.dataset["ready"] = "true";
  performance.mark("ready");
}

attempt(start);
