import { Refusal, timeline, type TimelineLane } from "../../src/index";
import { type Choices, potChoices } from "../choices";
import { bandOf } from "../chosen-pot";
import { drawSmallPot, sharedScale } from "../drawing/small-pot";
import { type ThemeName } from "../drawing/themes";
import { earlierBands } from "../limits-in-time";
import { type RootZone } from "../root-zone";
import { pictureWords as words } from "../words/picture";
import { type Actions } from "./actions";
import { fold, h } from "./elements";
import { svgNode } from "./picture-node";

/** As many as are looked at together; the list of pots names them all. */
const mostPots = 24;
/** Pixels: two side by side in the narrowest pane. */
const least = 136;
const gap = 6;

interface SmallOptions {
  readonly choices: Choices;
  readonly width: number;
  readonly theme: ThemeName;
  readonly actions: Actions;
}

/** The runoff EC of every pot that was judged, small and side by side on one scale, the most urgent first. */
export function smallPots(zone: RootZone, options: SmallOptions): Node[] {
  if (zone.pots.length < 2) return [];
  return [
    fold("small-pots-fold", words.sideBySide, () => [
      h("div", { className: "small-pots" }, ...pictures(zone, options)),
    ]),
  ];
}

function pictures({ pots, reading }: RootZone, { choices, width, theme, actions }: SmallOptions): HTMLElement[] {
  const drawn = pots.slice(0, mostPots).flatMap(({ vessel }) => {
    const pot = potChoices(choices, vessel);
    const found = bandOf(pot);
    const band = found instanceof Refusal ? undefined : found;
    const { lanes } = timeline(reading.rows, { band, earlier: earlierBands(pot), vessel });
    const lane = lanes.find(({ name }) => name === "EC");
    return lane?.series.some(({ role }) => role === "runoff") === true ? [{ vessel, lane }] : [];
  });
  const scale = sharedScale(drawn.map(({ lane }) => lane));
  const columns = Math.max(1, Math.floor((width + gap) / (least + gap)));
  const each = Math.floor((width - gap * (columns - 1)) / columns) - 2;
  return drawn.map(({ vessel = "", lane }, place) => {
    const picture = svgNode(drawSmallPot(lane, scale, { width: each, theme, title: words.smallPot(lastOf(lane)) }));
    const button = h(
      "button",
      { type: "button", id: `small-pot-${place}`, className: "small-pot" },
      h("span", {}, vessel),
      picture,
    );
    button.addEventListener("click", () => { actions.choose({ vessel }); });
    return button;
  });
}

const lastOf = ({ series, decimals }: TimelineLane): string | undefined =>
  series.find(({ role }) => role === "runoff")?.segments.at(-1)?.at(-1)?.value.toFixed(decimals);
