import { pourLiquids, Refusal } from "../../src/index";
import { type FlushOnSheet, flushView, type FlushView } from "../flush/flush-on-sheet";
import { type OwnSheet } from "../sheet/own-sheet";
import { flushWords as words } from "../words/flush";
import { button, fold, h } from "./elements";
import { keypad } from "./keypad";
import { type OwnActions, waysOn } from "./own-sheet";

/** What the pane shows while a flush sheet is in view. */
export interface FlushActions extends OwnActions {
  readonly writePot: (container: string, water: string) => void;
  readonly writePortion: (litres: string, ec: string, ph: string) => void;
}

/** What a person has typed into the fields and not yet written, by the field's id. */
export type Draft = Map<string, string>;

interface FlushParts {
  readonly own: OwnSheet;
  readonly draft: Draft;
  readonly actions: FlushActions;
  readonly curve: (view: FlushView) => Node;
}

/** The next portion in large figures, the stop check, the two readings to type, and the washout curve. */
export function flushSection(flush: FlushOnSheet, parts: FlushParts): Node[] {
  const view = flushView(flush);
  const head = [h("h2", {}, words.heading(flush.pot)), waysOn(parts.own, parts.actions)];
  if (view instanceof Refusal) return [...head, h("p", { id: "not-yet" }, view.message), ...askPot(flush, parts)];
  if (view === undefined) return [...head, ...askPot(flush, parts)];
  return [...head, ...nextPour(flush, view), ...portionForm(flush, view, parts), ...standing(view), parts.curve(view)];
}

/** The two figures that only the grower knows. */
function askPot({ containerLitres, waterEc }: FlushOnSheet, { draft, actions }: FlushParts): Node[] {
  if (containerLitres !== undefined && waterEc !== undefined) return [h("p", { id: "not-yet" }, words.fillOnSheet)];
  const [container, water] = [field("container", words.container, draft), field("water", words.water, draft)];
  const asked = [...(containerLitres === undefined ? [container] : []), ...(waterEc === undefined ? [water] : [])];
  const write = button(
    words.writePot,
    () => {
      actions.writePot(container.input.value, water.input.value);
    },
    { id: "write-pot", className: "main" },
  );
  return [h("p", {}, words.missing), ...form(asked, write, draft)];
}

function nextPour(
  { medium, pourPh, band }: FlushOnSheet,
  { targetEc, plan, standing: { says, nextLitres, poured } }: FlushView,
): Node[] {
  const tone = says.answer === "keep going" ? "act" : says.answer.startsWith("stop") ? "calm" : "wait";
  const liquid = medium === undefined ? "" : ` ${words.of(pourLiquids[medium].liquid)}`;
  const first = nextLitres === undefined ? words.pourNothing : words.pourNext;
  const amount =
    nextLitres === undefined
      ? undefined
      : h(
          "strong",
          { className: "amount" },
          words.litres(nextLitres),
          pourPh === undefined ? "" : ` ${words.atPh(pourPh)}`,
        );
  const [low, high] = band?.ph.map((limit) => limit.toFixed(1)) ?? [];
  return [
    h(
      "div",
      { id: "pour", className: "verdict", data: { tone } },
      h("span", {}, first, amount, nextLitres === undefined ? "" : h("span", { className: "urgency" }, liquid.trim())),
    ),
    h("p", { id: "says" }, `${words.says}: `, h("strong", {}, says.answer)),
    h(
      "p",
      { id: "stop-when" },
      low === undefined || high === undefined ? "" : words.stopWhen(targetEc.toFixed(2), low, high),
    ),
    h("p", { id: "so-far" }, words.poured(poured.toFixed(1), (plan.portions.at(-1)?.litresSoFar ?? 0).toFixed(1))),
  ];
}

function portionForm(
  { nextPortion, rows }: FlushOnSheet,
  { standing: { nextLitres } }: FlushView,
  { draft, actions }: FlushParts,
): Node[] {
  if (rows.next === undefined) return [h("p", {}, words.noRow)];
  const suggested = nextLitres === undefined ? "" : nextLitres.toFixed(1);
  const fields = [
    field("ec", words.ec, draft),
    field("ph", words.ph, draft),
    field("poured", words.pouredNow, draft, suggested),
  ] as const;
  const [ec, ph, poured] = fields;
  const write = button(
    words.writePortion(nextPortion),
    () => {
      actions.writePortion(poured.input.value, ec.input.value, ph.input.value);
    },
    { id: "write-portion", className: "main" },
  );
  return form(fields, write, draft);
}

interface Field {
  readonly input: HTMLInputElement;
  readonly node: HTMLElement;
}

function field(name: string, label: string, draft: Draft, otherwise = ""): Field {
  const id = `flush-${name}`;
  const input = h("input", {
    id,
    type: "text",
    inputMode: "decimal",
    autocomplete: "off",
    value: draft.get(id) ?? otherwise,
    size: 6,
  });
  return { input, node: h("div", { className: "field large" }, h("label", { htmlFor: id }, label), input) };
}

function form(fields: readonly Field[], write: HTMLButtonElement, draft: Draft): Node[] {
  const typed = (input: HTMLInputElement): void => { draft.set(input.id, input.value); };
  for (const { input } of fields) {
    input.addEventListener("input", () => { typed(input); });
    input.addEventListener("keydown", ({ key }) => { if (key === "Enter") write.click(); });
  }
  return [
    h("div", { className: "fields" }, ...fields.map(({ node }) => node)),
    keypad(
      fields.map(({ input }) => input),
      typed,
    ),
    h("div", { className: "bar" }, write),
  ];
}

function standing({ targetEc, standing: { says, left } }: FlushView): Node[] {
  const amount = left.litres === "cannot say" ? words.leftUnknown : words.left(left.litres.toFixed(1));
  return [
    h("p", { id: "left" }, amount),
    fold("flush-why", words.why, () => [
      h("ul", {}, ...[...says.reasons, ...left.reasons].map((reason) => h("li", {}, reason))),
    ]),
    h("h3", { data: { target: targetEc.toFixed(2) } }, words.curve),
  ];
}
