import { type SheetTool, sheetTools } from "../next-thing";
import { workWords as words } from "../words/sheet-work";
import { columnsToAdd } from "./columns-to-add";
import { button, h } from "./elements";
import { type WorkActions, type WorkState } from "./work-state";

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
