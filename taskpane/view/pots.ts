import { type PotStanding } from "../../src/index";
import { type RootZone } from "../root-zone";
import { potsWords } from "../words/pots";
import { standingWords } from "../words/standing";
import { type Actions } from "./actions";
import { fold, h } from "./elements";
import { signs } from "./standing";

/** So many pots are seen at once; the others are a press away. */
const shownAtOnce = 6;

/** Every pot of the bench with its verdict, the most urgent first; a press shows that pot. */
export function potsSection({ pots, reading, vessel }: RootZone, actions: Actions): Node[] {
  const without = reading.vessels.filter((each) => !pots.some((pot) => pot.vessel === each));
  if (reading.vessels.length < 2 || pots.length === 0) return [];
  const lines = pots.map((pot, place) =>
    h("li", {}, potButton(pot, { place, isShown: pot.vessel === vessel, actions })),
  );
  const rest = lines.slice(shownAtOnce);
  return [
    h("h2", {}, potsWords.title),
    h("ul", { className: "pots" }, ...lines.slice(0, shownAtOnce)),
    ...(rest.length === 0
      ? []
      : [fold("pots-fold", potsWords.more(rest.length), () => [h("ul", { className: "pots" }, ...rest)])]),
    ...(without.length === 0 ? [] : [h("p", { className: "why" }, potsWords.withoutLimits(without))]),
  ];
}

interface Line {
  readonly place: number;
  readonly isShown: boolean;
  readonly actions: Actions;
}

function potButton(
  { vessel, judgement: { verdict, urgency } }: PotStanding,
  { place, isShown, actions }: Line,
): HTMLButtonElement {
  const [sign, tone] = signs[verdict];
  const line = h(
    "button",
    { type: "button", id: `pot-${place}`, className: "pot", data: { tone }, aria: { pressed: String(isShown) } },
    h("span", { className: "sign", aria: { hidden: "true" } }, sign),
    h("strong", {}, vessel ?? ""),
    h("span", {}, `${verdict}, ${standingWords.urgency[urgency]}`),
  );
  line.addEventListener("click", () => {
    actions.choose({ vessel });
  });
  return line;
}
