import { type TimelineReading } from "../../src/index";
import { nearest } from "../drawing/nearest";
import { type Drawing } from "../drawing/timeline-drawing";
import { type RootZone } from "../root-zone";
import { pictureWords } from "../words/picture";
import { type Actions } from "./actions";
import { h } from "./elements";
import { pointInWords } from "./point-words";

interface PointOptions extends Pick<Actions, "goToRow"> {
  readonly drawing: Drawing;
  readonly picture: Node;
  readonly title: string;
}

/** From the reading at a place, the place that a key leads to. */
const steps: Readonly<Record<string, (place: number, last: number) => number>> = {
  ArrowRight: (place) => place + 1,
  ArrowUp: (place) => place + 1,
  ArrowLeft: (place) => place - 1,
  ArrowDown: (place) => place - 1,
  PageUp: (place) => place + 10,
  PageDown: (place) => place - 10,
  Home: () => 0,
  End: (_, last) => last,
};

/**
 * The picture as a slider over its readings: arrow keys move from one to the next, Home and End to the ends, pointer
 * and touch to the nearest; each is told in words, and Enter selects its row in the sheet.
 */
export function pointReader(zone: RootZone, { drawing, picture, title, goToRow }: PointOptions): HTMLElement {
  const { readings } = zone.timeline;
  const last = readings.length - 1;
  const cursor = h("div", { className: "cursor", hidden: true });
  const said = h("p", { className: "point", id: "point" }, pictureWords.howToRead);
  const slider = h("div", { className: "picture", id: "timeline", tabIndex: 0, role: "slider" }, picture, cursor);
  slider.setAttribute("aria-label", `${title}. ${drawing.description}`);
  let place = last;
  const stand = (next: number): void => {
    place = Math.min(Math.max(next, 0), last);
    tellPlace(slider, readings, place, wordsAt(zone, place));
  };
  const move = (next: number): void => {
    stand(next);
    said.textContent = wordsAt(zone, place);
    cursor.hidden = false;
    cursor.style.setProperty("left", `${drawing.x(readings[place]?.day ?? 0)}px`);
    slider.dataset["row"] = String(readings[place]?.row);
  };
  stand(last);
  const before = readings.findIndex(({ row }) => String(row) === pointedAt());
  if (before >= 0) move(before);
  slider.addEventListener("keydown", (event) => {
    const step = steps[event.key];
    if (step !== undefined) move(step(place, last));
    else if (event.key === "Enter") goToRow(readings[place]?.row ?? 0, slider.id);
    else return;
    event.preventDefault();
  });
  const point = (event: PointerEvent): void => {
    const scrolledTo = event.clientX - slider.getBoundingClientRect().left + slider.scrollLeft;
    move(nearest(readings, drawing, scrolledTo));
  };
  slider.addEventListener("pointermove", point);
  slider.addEventListener("pointerdown", point);
  return h("div", {}, slider, said);
}

/** The row of the grid that was read last, so that a picture drawn anew still points at it. */
const pointedAt = (): string | undefined => document.getElementById("timeline")?.dataset["row"];

function tellPlace(slider: HTMLElement, readings: readonly TimelineReading[], place: number, words: string): void {
  const values = { valuenow: String(place + 1), valuemin: "1", valuemax: String(readings.length), valuetext: words };
  for (const [name, value] of Object.entries(values)) slider.setAttribute(`aria-${name}`, value);
}

function wordsAt({ timeline, selection }: RootZone, place: number): string {
  const reading = timeline.readings[place];
  if (reading === undefined) return "";
  return `${pointInWords(reading, timeline)}; row ${(selection.rowNumbers[reading.row] ?? reading.row) + 1}`;
}
