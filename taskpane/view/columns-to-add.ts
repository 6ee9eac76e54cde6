import { type FormulaKind } from "../formulas/computed-columns";
import { workWords as words } from "../words/sheet-work";
import { button, chooser, h } from "./elements";
import { type WorkActions, type WorkState } from "./work-state";

/** The columns that can be computed, each with what it tells or what it lacks, and what can be done with columns. */
export function columnsToAdd(
  { offers, ticked, uncompensated, kind, inTable }: WorkState,
  actions: WorkActions,
): HTMLElement {
  const lines = offers.map(({ column: { header, about }, missing }, i) =>
    h(
      "li",
      {},
      checkbox(`add-${i}`, header, {
        checked: missing === undefined && ticked.has(header),
        disabled: missing !== undefined,
        onChange: (on) => {
          actions.tick(header, on);
        },
      }),
      h("span", { className: "why" }, missing ?? about),
    ),
  );
  return h(
    "fieldset",
    {},
    h("legend", {}, inTable ? words.columnsIntoTable : words.columnsBeside),
    checkbox("uncompensated", words.uncompensated, {
      checked: uncompensated,
      disabled: false,
      onChange: actions.compensate,
    }),
    h("ul", { className: "columns" }, ...lines),
    ...kindOfFormula(kind, actions),
    h(
      "div",
      { className: "bar" },
      button(words.addColumns, actions.addColumns, { id: "add-columns" }),
      !inTable && button(words.extend, actions.extend, { id: "extend" }),
      button(words.turnColumns, actions.turnColumns, { id: "turn-columns" }),
      button(words.plantColumns, actions.addPlantColumns, { id: "plant-columns" }),
    ),
  );
}

const kinds: readonly FormulaKind[] = ["functions", "plain"];

/** Whether columns call the functions, or do without them; what that costs is said where it is chosen. */
function kindOfFormula(kind: FormulaKind, { choose }: WorkActions): HTMLElement[] {
  const onChoose = (value: string): void => { for (const each of kinds) if (each === value) choose(each); };
  const choices = kinds.map((value) => ({ value, text: words.kinds[value] }));
  return [
    chooser("formula-kind", words.kind, choices, { value: kind, onChoose }),
    ...(kind === "plain" ? [h("p", { className: "why" }, words.wordsStayBlank)] : []),
  ];
}

interface Box {
  readonly checked: boolean;
  readonly disabled: boolean;
  readonly onChange: (on: boolean) => void;
}

function checkbox(id: string, label: string, { checked, disabled, onChange }: Box): HTMLElement {
  const box = h("input", { type: "checkbox", id, checked, disabled });
  box.addEventListener("change", () => { onChange(box.checked); });
  return h("label", { className: "check" }, box, ` ${label}`);
}
