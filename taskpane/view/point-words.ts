import { type Timeline, type TimelineReading } from "../../src/index";
import { dayInWords } from "../drawing/time-axis";
import { readingsWords as words } from "../words/readings";

/** One reading in words: date, values by lane, flags, what was done. */
export function pointInWords({ day, values, flags, events }: TimelineReading, { axis, lanes }: Timeline): string {
  const when = axis === "dates" ? dayInWords(day) : words.readingOf(day);
  const told = lanes.flatMap(({ name, unit, decimals }) => {
    const own = values.filter(({ lane }) => lane === name);
    const figures = own.map(({ role, value }) => `${words.side(role)} ${value.toFixed(decimals)}`.trimStart());
    return figures.length === 0 ? [] : [`${name} ${figures.join(", ")}${unit === "" ? "" : ` ${unit}`}`];
  });
  const flagged = flags === undefined ? [] : [flags.length === 0 ? words.inBand : flags.join(", ")];
  return [when, ...told, ...flagged, ...events.map(({ kind, words }) => `${kind}: ${words}`)].join("; ");
}
