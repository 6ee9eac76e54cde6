import { type Timeline, type TimelineReading } from "../../src/index";
import { dayInWords } from "../drawing/time-axis";

const roleWords = { input: "in ", runoff: "runoff ", only: "" } as const;

/** One reading in words: date, values by lane, flags, what was done. */
export function pointInWords({ day, values, flags, events }: TimelineReading, { axis, lanes }: Timeline): string {
  const when = axis === "dates" ? dayInWords(day) : `reading ${day}`;
  const told = lanes.flatMap(({ name, unit, decimals }) => {
    const own = values.filter(({ lane }) => lane === name);
    const figures = own.map(({ role, value }) => `${roleWords[role]}${value.toFixed(decimals)}`);
    return figures.length === 0 ? [] : [`${name} ${figures.join(", ")}${unit === "" ? "" : ` ${unit}`}`];
  });
  const flagged = flags === undefined ? [] : [flags.length === 0 ? "in band" : flags.join(", ")];
  return [when, ...told, ...flagged, ...events.map(({ kind, words }) => `${kind}: ${words}`)].join("; ");
}
