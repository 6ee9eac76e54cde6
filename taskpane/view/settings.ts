import { type Feeder, feeders, media, type Medium } from "../../src/index";
import { type Choices, potChoices, type PotChoices } from "../choices";
import { type RootZone } from "../root-zone";
import { settingsWords as words } from "../words/settings";
import { type Actions } from "./actions";
import { chooser, h, onTyped } from "./elements";

/** What the roots of the pot shown stand in, how hungry the plant is, and which pot. */
export function settingsSection(zone: RootZone, choices: Choices, actions: Actions): Node[] {
  const { reading: { vessels }, vessel } = zone;
  const pot = chooser("vessel", words.pot, vessels.map((value) => ({ value, text: value })), {
    value: vessel ?? "",
    onChoose: (chosen) => {
      actions.choose({ vessel: chosen });
    },
  });
  const chosen = potChoices(choices, vessel);
  const mediumLabel = vessels.length > 1 && vessel !== undefined ? words.mediumOf(vessel) : words.medium;
  return [
    h(
      "div",
      { className: "fields" },
      vessels.length > 1 && pot,
      mediumField(chosen, mediumLabel, actions),
      feederField(chosen, actions),
      ...containerField(zone, chosen, actions),
    ),
  ];
}

function mediumField({ medium }: PotChoices, label: string, actions: Actions): HTMLElement {
  const choices = [{ value: "", text: words.choose }, ...media.map((value) => ({ value, text: value }))];
  return chooser("medium", label, choices, {
    value: medium ?? "",
    onChoose: (value) => {
      actions.chooseForPot({ medium: media.find((each): each is Medium => each === value) });
    },
  });
}

function feederField({ feeder }: PotChoices, actions: Actions): HTMLElement {
  return chooser("feeder", words.feeder, feeders.map((value) => ({ value, text: value })), {
    value: feeder,
    onChoose: (value) => {
      actions.chooseForPot({ feeder: feeders.find((each): each is Feeder => each === value) ?? "medium" });
    },
  });
}

/** Known, the course tells the litres of a flush from it, and the flush sheet begins with it. */
function containerField({ containerProblem }: RootZone, { container }: PotChoices, actions: Actions): HTMLElement[] {
  const input = h("input", {
    id: "container",
    type: "text",
    inputMode: "decimal",
    value: container,
    size: 4,
    autocomplete: "off",
  });
  onTyped(input, () => { actions.chooseForPot({ container: input.value }); });
  return [
    h("div", { className: "field" }, h("label", { htmlFor: input.id }, words.container), input),
    ...(containerProblem === undefined
      ? []
      : [h("p", { id: "container-said", role: "status", data: { tone: "wait" } }, containerProblem)]),
  ];
}
