import { type FormulaKind } from "../formulas/computed-columns";
import { type Offer } from "../formulas/offers";
import { type SheetTool, sheetTools } from "../next-thing";
import { type FunctionsState } from "../sheet/functions-alive";
import { workWords as words } from "../words/sheet-work";
import { button, chooser, h } from "./elements";

export interface WorkState {
  readonly offers: readonly Offer[];
  readonly ticked: ReadonlySet<string>;
  readonly uncompensated: boolean;
  readonly kind: FormulaKind;
  /** In a Table new rows take the formulas on by themselves. */
  readonly inTable: boolean;
  readonly functions: FunctionsState | undefined;
  /** Whether "keep values only" waits for its second press. */
  readonly isAsking: boolean;
  readonly canTakeBack: boolean;
}

/** What a person can do to the sheet here. */
export interface WorkActions {
  readonly tick: (header: string, on: boolean) => void;
  readonly compensate: (on: boolean) => void;
  readonly choose: (kind: FormulaKind) => void;
  readonly addColumns: () => void;
  readonly turnColumns: () => void;
  readonly addPlantColumns: () => void;
  readonly extend: () => void;
  readonly mark: () => void;
  readonly unmark: () => void;
  readonly newSheet: (tool: SheetTool) => void;
  readonly checkFunctions: () => void;
  readonly reenter: () => void;
  readonly askValuesOnly: (asking: boolean) => void;
  readonly valuesOnly: () => void;
  readonly takeBack: () => void;
}

/** The button of a new sheet. */
export const newSheetId = (tool: SheetTool): string => `new-${tool.replace(" sheet", "")}`;

/** Columns, marks, new sheets and the state of the functions; every action says what it did and can be taken back. */
export function sheetWorkSection(state: WorkState, actions: WorkActions): Node[] {
  return [
    h("h2", {}, words.title),
    h("p", { className: "why" }, words.promise),
    ...(state.offers.length === 0 ? [] : [columnsToAdd(state, actions), marks(actions)]),
    h("div", { className: "bar" }, ...sheetTools.map((tool) =>
      button(words.newSheet(tool), () => { actions.newSheet(tool); }, { id: newSheetId(tool) }))),
    ...functionsPart(state, actions),
    ...takeBackBar(state.canTakeBack, actions),
  ];
}

/** The way back from the last step. */
export const takeBackBar = (canTakeBack: boolean, { takeBack }: Pick<WorkActions, "takeBack">): Node[] =>
  canTakeBack ? [h("div", { className: "bar" }, button(words.takeBack, takeBack, { id: "take-back" }))] : [];

function columnsToAdd({ offers, ticked, uncompensated, kind, inTable }: WorkState, actions: WorkActions): HTMLElement {
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

const marks = ({ mark, unmark }: WorkActions): HTMLElement =>
  h(
    "div",
    { className: "bar" },
    button(words.mark, mark, { id: "mark" }),
    button(words.unmark, unmark, { id: "unmark" }),
  );

function functionsPart({ functions, isAsking }: WorkState, actions: WorkActions): Node[] {
  const [broken, alive] = [functions?.broken ?? 0, functions?.alive ?? 0];
  return [
    h("p", { id: "functions" }, functions?.words ?? words.looking),
    h(
      "div",
      { className: "bar" },
      button(words.lookAgain, actions.checkFunctions, { id: "check-functions" }),
      broken > 0 && button(words.reenter, actions.reenter, { id: "reenter" }),
      alive > 0 &&
        !isAsking &&
        button(
          `${words.valuesOnly} ...`,
          () => {
            actions.askValuesOnly(true);
          },
          { id: askId },
        ),
    ),
    ...(isAsking ? [confirmation(alive, actions)] : []),
  ];
}

/**
 * The button that asks and the one that leaves all as it is share the focus: pressing twice by mistake changes nothing.
 */
const askId = "ask-values-only";

/** The second step before formulas become values. */
const confirmation = (alive: number, actions: WorkActions): HTMLElement =>
  h(
    "div", { role: "group", aria: { label: words.valuesOnly } },
    h("p", {}, words.askValuesOnly(alive)),
    h(
      "div", { className: "bar" },
      button(words.turn, actions.valuesOnly, { id: "values-only" }),
      button(words.leave, () => { actions.askValuesOnly(false); }, { id: askId }),
    ),
  );

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
