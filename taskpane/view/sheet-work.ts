import { type Offer } from "../formulas/offers";
import { type FunctionsState } from "../sheet/functions-alive";
import { button, h } from "./elements";

export interface WorkState {
  readonly offers: readonly Offer[];
  readonly ticked: ReadonlySet<string>;
  readonly uncompensated: boolean;
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
  readonly addColumns: () => void;
  readonly extend: () => void;
  readonly mark: () => void;
  readonly unmark: () => void;
  readonly newMixSheet: () => void;
  readonly newFlushSheet: () => void;
  readonly checkFunctions: () => void;
  readonly reenter: () => void;
  readonly askValuesOnly: (asking: boolean) => void;
  readonly valuesOnly: () => void;
  readonly takeBack: () => void;
}

/** Columns, marks, new sheets and the state of the functions; every action says what it did and can be taken back. */
export function sheetWorkSection(state: WorkState, actions: WorkActions): Node[] {
  return [
    h("h2", {}, "Work on the sheet"),
    h("p", { className: "why" }, "Nothing here writes over a filled cell."),
    ...(state.offers.length === 0 ? [] : [columnsToAdd(state, actions), marks(actions)]),
    h(
      "div", { className: "bar" },
      button("New mix sheet", actions.newMixSheet, { id: "new-mix" }),
      button("New flush sheet", actions.newFlushSheet, { id: "new-flush" }),
    ),
    ...functionsPart(state, actions),
    ...(state.canTakeBack ? [h("div", { className: "bar" }, button("Take back the last step", actions.takeBack, { id: "take-back" }))] : []),
  ];
}

function columnsToAdd({ offers, ticked, uncompensated, inTable }: WorkState, actions: WorkActions): HTMLElement {
  const lines = offers.map(({ column: { header, about }, missing }, i) =>
    h(
      "li", {},
      checkbox(`add-${i}`, header, { checked: missing === undefined && ticked.has(header), disabled: missing !== undefined, onChange: (on) => { actions.tick(header, on); } }),
      h("span", { className: "why" }, missing ?? about),
    ));
  return h(
    "fieldset", {},
    h("legend", {}, inTable ? "Columns to put into the Table" : "Columns to put beside the log"),
    checkbox("uncompensated", "The meter does not correct EC to 25 C", { checked: uncompensated, disabled: false, onChange: actions.compensate }),
    h("ul", { className: "columns" }, ...lines),
    h(
      "div", { className: "bar" },
      button("Add the ticked columns", actions.addColumns, { id: "add-columns" }),
      !inTable && button("Carry on into new rows", actions.extend, { id: "extend" }),
    ),
  );
}

const marks = ({ mark, unmark }: WorkActions): HTMLElement =>
  h("div", { className: "bar" }, button("Mark flagged rows", mark, { id: "mark" }), button("Remove the marks", unmark, { id: "unmark" }));

function functionsPart({ functions, isAsking }: WorkState, actions: WorkActions): Node[] {
  const [broken, alive] = [functions?.broken ?? 0, functions?.alive ?? 0];
  return [
    h("p", { id: "functions" }, functions?.words ?? "Looking at the functions ..."),
    h(
      "div", { className: "bar" },
      button("Look again", actions.checkFunctions, { id: "check-functions" }),
      broken > 0 && button("Enter stuck formulas again", actions.reenter, { id: "reenter" }),
      alive > 0 && !isAsking && button("Keep values only ...", () => { actions.askValuesOnly(true); }, { id: askId }),
    ),
    ...(isAsking ? [confirmation(alive, actions)] : []),
  ];
}

/** The button that asks and the one that leaves all as it is share the focus: pressing twice by mistake changes nothing. */
const askId = "ask-values-only";

/** The second step before formulas become values. */
const confirmation = (alive: number, actions: WorkActions): HTMLElement =>
  h(
    "div", { role: "group", aria: { label: "Keep values only" } },
    h("p", {}, `Turn ${alive === 1 ? "the one formula" : `all ${alive} formulas`} of this workbook that use the functions into the values they show? They no longer follow the readings then.`),
    h(
      "div", { className: "bar" },
      button("Turn into values", actions.valuesOnly, { id: "values-only" }),
      button("Leave them", () => { actions.askValuesOnly(false); }, { id: askId }),
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
