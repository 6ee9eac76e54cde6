import { type Choices, limitNames, type OwnLimits, potChoices, type PotChoices } from "../choices";
import { canBeDated, earlierBands, holdingFrom, limitsChanged } from "../limits-in-time";
import { type RootZone } from "../root-zone";
import { limitsWords as words } from "../words/limits";
import { type Actions } from "./actions";
import { chooser, fold, h, onTyped } from "./elements";

const noLimits: OwnLimits = { phLow: "", phHigh: "", ecLow: "", ecHigh: "" };

/** The four own limits, which win over the table once all four are there, and from when they hold. */
export function limitsSection(zone: RootZone, choices: Choices, actions: Pick<Actions, "chooseForPot">): Node[] {
  const { bandProblem, vessel } = zone;
  const pot = potChoices(choices, vessel);
  const days = daysOf(zone);
  const tone = bandProblem === undefined ? "calm" : "wait";
  return [
    fold(
      "limits-fold",
      words.limits,
      () => [
        h("p", { id: "limits-said", role: "status", data: { tone } }, bandProblem ?? inForce(zone, pot)),
        h("p", { className: "why" }, words.own),
        h("div", { className: "fields four" }, ...fields(pot, days[0], actions)),
        ...fromWhen(pot, days, actions),
      ],
      pot.own !== undefined,
    ),
  ];
}

function inForce({ band, timeline: { axis } }: RootZone, pot: PotChoices): string {
  if (band === undefined) return words.noneInForce;
  const before = axis === "dates" ? earlierBands(pot).at(-1) : undefined;
  return words.inForce(band) + (before === undefined ? "" : ` ${words.before(before)}`);
}

/** The days with readings, the newest first; none in a log without dates. */
function daysOf({ timeline: { axis, readings } }: RootZone): readonly number[] {
  if (axis !== "dates") return [];
  return [...new Set(readings.map(({ day }) => Math.floor(day)))].reverse();
}

/** All four are read anew at each change: one may be typed before the page shows the one before it. */
function fields(pot: PotChoices, newest: number | undefined, { chooseForPot }: Pick<Actions, "chooseForPot">): Node[] {
  const inputs = limitNames.map((name) => {
    const value = (pot.own ?? noLimits)[name];
    return h("input", { id: `own-${name}`, type: "text", inputMode: "decimal", value, size: 4, autocomplete: "off" });
  });
  const typed = (): OwnLimits => {
    const [phLow = "", phHigh = "", ecLow = "", ecHigh = ""] = inputs.map(({ value }) => value);
    return { phLow, phHigh, ecLow, ecHigh };
  };
  return inputs.map((input, place) => {
    onTyped(input, () => { chooseForPot(limitsChanged(pot, typed(), newest)); });
    const label = words.limitNames[limitNames[place] ?? "phLow"];
    return h("div", { className: "field" }, h("label", { htmlFor: input.id }, label), input);
  });
}

const allRows = "all";
/** The days of a year with a reading each: further back nobody looks one up in a list. */
const mostDays = 366;

/** One question about limits that others stood before: from when? */
function fromWhen(pot: PotChoices, days: readonly number[], { chooseForPot }: Pick<Actions, "chooseForPot">): Node[] {
  const [newest] = days;
  if (newest === undefined || !canBeDated(pot)) return [];
  const { since } = pot;
  const offered = [newest + 1, ...days.slice(0, mostDays)];
  const all = since === undefined || offered.includes(since) ? offered : [...offered, since].sort((a, b) => b - a);
  const choices = [
    { value: allRows, text: words.allRows },
    ...all.map((day) => ({ value: String(day), text: words.fromDay(day, newest) })),
  ];
  const onChoose = (chosen: string): void => {
    chooseForPot(holdingFrom(pot, chosen === allRows ? undefined : Number(chosen)));
  };
  return [chooser("limits-since", words.fromWhen, choices, { value: String(since ?? allRows), onChoose })];
}
