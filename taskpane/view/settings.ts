import { type Feeder, feeders, media, type Medium } from "../../src/index";
import { type Choices, type OwnLimits } from "../choices";
import { type RootZone } from "../root-zone";
import { type Actions } from "./actions";
import { chooser, fold, h } from "./elements";

/** What the roots stand in, how hungry the plant is, and which pot. */
export function settingsSection(zone: RootZone, choices: Choices, actions: Actions): Node[] {
  const { vessels } = zone.reading;
  const pot = chooser("vessel", "Pot or bed", vessels.map((value) => ({ value, text: value })), {
    value: zone.vessel ?? "",
    onChoose: (vessel) => {
      actions.choose({ vessel });
    },
  });
  return [h("div", { className: "fields" }, mediumField(choices, actions), feederField(choices, actions), vessels.length > 1 && pot)];
}

function mediumField({ medium }: Choices, actions: Actions): HTMLElement {
  const choices = [{ value: "", text: "choose ..." }, ...media.map((value) => ({ value, text: value }))];
  return chooser("medium", "Medium", choices, {
    value: medium ?? "",
    onChoose: (value) => {
      actions.choose({ medium: media.find((each): each is Medium => each === value) });
    },
  });
}

function feederField({ feeder }: Choices, actions: Actions): HTMLElement {
  return chooser("feeder", "Feeder", feeders.map((value) => ({ value, text: value })), {
    value: feeder,
    onChoose: (value) => {
      actions.choose({ feeder: feeders.find((each): each is Feeder => each === value) ?? "medium" });
    },
  });
}

const limitFields: readonly (readonly [keyof OwnLimits, string])[] = [
  ["phLow", "pH low"],
  ["phHigh", "pH high"],
  ["ecLow", "EC low"],
  ["ecHigh", "EC high"],
];

/** The four own limits; they win over the table once all four are there. */
export function limitsSection({ band, bandProblem }: RootZone, { own }: Choices, actions: Actions): Node[] {
  const typed: OwnLimits = own ?? { phLow: "", phHigh: "", ecLow: "", ecHigh: "" };
  const field = ([name, label]: (typeof limitFields)[number]): HTMLElement => {
    const input = h("input", { id: `own-${name}`, type: "text", inputMode: "decimal", value: typed[name], size: 4, autocomplete: "off" });
    input.addEventListener("change", () => { actions.choose({ own: { ...typed, [name]: input.value } }); });
    return h("div", { className: "field" }, h("label", { htmlFor: input.id }, label), input);
  };
  const inForce = band === undefined ? "None in force yet." : `In force: runoff pH ${band.ph.join(" to ")}, EC ${band.ec.join(" to ")} mS/cm (${sourceInWords(band.source.ec)}).`;
  return [
    fold("limits-fold", "Limits, and my own", () => [
      h("p", { id: "limits-said", role: "status", data: { tone: bandProblem === undefined ? "calm" : "wait" } }, bandProblem ?? inForce),
      h("p", { className: "why" }, "Own limits of the runoff, EC in mS/cm: fill in all four and they win over the medium's."),
      h("div", { className: "fields" }, ...limitFields.map(field)),
    ], Object.values(typed).some((text) => text !== "")),
  ];
}

const sourceInWords = (source: string): string => (source.startsWith("[") ? `from a bulletin: ${source.slice(1, -1)}` : source);
