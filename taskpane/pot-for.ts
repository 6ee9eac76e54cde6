import { drainedMedia, isOwnBand, type TimelineReading, usualRamp } from "../src/index";
import { type Tool } from "./next-thing";
import { type RootZone } from "./root-zone";
import { type SheetPot } from "./templates/sheet-pot";

/** Weaker than this a solution is water, not the feed that a crop gets in quiet weeks: mS/cm. Common practice. */
const weakestFeed = 0.5;

/** What the log and the course tell of the pot shown, for the boxes of a sheet that is made for it. */
export function potFor({ vessel, band, timeline, judgement, containerLitres }: RootZone, tool: Tool): SheetPot {
  const { readings, axis } = timeline;
  const last = (lane: "EC" | "pH", role: "input" | "runoff"): number | undefined => latest(readings, lane, role);
  const step = judgement?.course.find(({ act }) =>
    tool === "flush sheet"
      ? act.includes("flush") || act === "reset the pH"
      : act.includes("feed") || act.includes("tank"),
  );
  const medium = band?.medium;
  const drained = tool !== "flush sheet" || drainedMedia.some((each) => each === medium);
  const flushed = timeline.watches.at(-1)?.flushed;
  const sinceFlush = flushed === undefined ? Infinity : Math.floor((readings.at(-1)?.day ?? 0) - flushed);
  return {
    name: vessel,
    containerLitres,
    medium: drained ? medium : undefined,
    feeder: band?.feeder,
    limits: band !== undefined && isOwnBand(band) ? [...band.ph, ...band.ec] : undefined,
    day: axis === "dates" ? readings.at(-1)?.day : undefined,
    runoffEc: last("EC", "runoff"),
    runoffPh: last("pH", "runoff"),
    feedEc: fullFeed(readings),
    feedPh: last("pH", "input"),
    // The limit itself is no target: the sheet goes a little inside it.
    targetEc: tool === "flush sheet" && step?.ec === band?.ec[1] ? undefined : step?.ec,
    pourPh: step?.ph ?? (tool === "mix sheet" ? band?.phAim : undefined),
    daysSinceFlush: sinceFlush >= 0 && sinceFlush <= usualRamp.daysToFull ? sinceFlush : undefined,
  };
}

function latest(readings: readonly TimelineReading[], lane: "EC" | "pH", role: "input" | "runoff"): number | undefined {
  for (let place = readings.length - 1; place >= 0; place -= 1) {
    const found = readings[place]?.values.find((figure) => figure.lane === lane && figure.role === role);
    if (found !== undefined) return found.value;
  }
  return undefined;
}

/** The last feed that was one: the plain water of a flush is not what the crop gets in quiet weeks. */
function fullFeed(readings: readonly TimelineReading[]): number | undefined {
  for (let place = readings.length - 1; place >= 0; place -= 1) {
    const value = readings[place]?.values.find(({ lane, role }) => lane === "EC" && role === "input")?.value;
    if (value !== undefined && value >= weakestFeed) return value;
  }
  return undefined;
}
