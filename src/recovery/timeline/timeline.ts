import { type Band } from "../../bands/band";
import { bandOn, type EarlierBand } from "../../bands/earlier-band";
import { logInTime, type LogInTime, type PlacedRow } from "../../log/in-time";
import { type LogEvent, type LogRow } from "../../log/log";
import {
  type LaneDefinition,
  laneDefinitions,
  type LaneGroup,
  type LaneName,
  type LaneValue,
  type SeriesRole,
} from "./lanes";
import { laneBands, type LaneBand } from "./lane-bands";
import { laneTrend, type LaneTrend } from "./lane-trend";
import { RowInTime, type TimelineReading } from "./reading";
import { segments, type TimelinePoint } from "./segments";
import { type Watch, watches } from "./watch";

export interface TimelineSeries {
  readonly role: SeriesRole;
  /** Runs of neighbouring readings; between two runs the line stays open. */
  readonly segments: readonly (readonly TimelinePoint[])[];
}

export interface TimelineLane {
  readonly name: LaneName;
  readonly group: LaneGroup;
  readonly unit: string;
  readonly decimals: number;
  /** The least span of values worth drawing. */
  readonly leastSpan: number;
  readonly series: readonly TimelineSeries[];
  /** The target band of this lane today, where the grower has one. */
  readonly limits: readonly [low: number, high: number] | undefined;
  /** The same with those that stood before, in order of time, today's last; empty without one. */
  readonly bands: readonly LaneBand[];
  readonly trend: LaneTrend;
}

export interface TimelineEvent extends LogEvent {
  readonly day: number;
  readonly row: number;
}

/** All that a drawing of a log needs, and no pixel. */
export interface Timeline {
  readonly axis: LogInTime["axis"];
  readonly span: readonly [first: number, last: number] | undefined;
  readonly lanes: readonly TimelineLane[];
  readonly events: readonly TimelineEvent[];
  readonly watches: readonly Watch[];
  /** In order of time. */
  readonly readings: readonly TimelineReading[];
  /** Rows without a date in a log that has dates: they have no place on the axis. */
  readonly undated: number;
}

export interface TimelineOptions {
  readonly band?: Band | undefined;
  /** What the band was before, oldest first; without dates nobody can tell what held when, and today's holds. */
  readonly earlier?: readonly EarlierBand[] | undefined;
  /** Only this vessel's rows. */
  readonly vessel?: string | undefined;
}

/**
 * A log as a drawable recovery timeline: lanes on one time axis, bands, events, gaps and the watch after a flush.
 *
 * Feeds the look back over weeks, and the 24 to 48 hours after a flush. Nothing is smoothed or filled in.
 *
 * Source:   common practice
 */
export function timeline(rows: readonly LogRow[], options: TimelineOptions = {}): Timeline {
  const { axis, rows: placed, undated } = logInTime(rows, options.vessel);
  const { band } = options;
  const earlier = axis === "dates" ? (options.earlier ?? []) : [];
  const events = placed.flatMap(({ day, row, events: said }) => said.map((event) => ({ ...event, day, row })));
  const span = spanOf(placed);
  const lanes = lanesOf(placed, { axis, band, earlier, events, span });
  return {
    axis,
    span,
    lanes,
    events,
    watches: axis === "dates" ? watches(events) : [],
    readings: placed.map((row) => new RowInTime(row, band === undefined ? undefined : bandOn(row.day, band, earlier))),
    undated,
  };
}

function spanOf(placed: readonly PlacedRow[]): Timeline["span"] {
  const [first, last] = [placed[0], placed.at(-1)];
  return first === undefined || last === undefined ? undefined : [first.day, last.day];
}

interface LaneContext extends Pick<Timeline, "axis" | "events" | "span"> {
  readonly band: Band | undefined;
  readonly earlier: readonly EarlierBand[];
}

/** The lanes that the log has readings for; one that only stands in for another gives way to it. */
function lanesOf(placed: readonly PlacedRow[], context: LaneContext): TimelineLane[] {
  const lanes: TimelineLane[] = [];
  for (const definition of laneDefinitions) {
    if (lanes.some(({ name }) => name === definition.standsInFor)) continue;
    const lane = laneOf(definition, placed, context);
    if (lane.series.length > 0) lanes.push(lane);
  }
  return lanes;
}

function laneOf(
  definition: LaneDefinition,
  placed: readonly PlacedRow[],
  { axis, band, earlier, events, span }: LaneContext,
): TimelineLane {
  const { name, group, unit, decimals, resolution, leastSpan } = definition;
  const read = definition.series.map(({ role, value }) => ({ role, points: pointsOf(placed, value) }));
  return {
    name,
    group,
    unit,
    decimals,
    leastSpan,
    series: read
      .filter(({ points }) => points.length > 0)
      .map(({ role, points }) => ({ role, segments: segments(points) })),
    limits: band === undefined ? undefined : definition.limits(band),
    bands: band === undefined ? [] : laneBands(definition.limits, { today: band, earlier }, span ?? [0, 0]),
    trend: laneTrend(read.at(-1)?.points ?? [], { events, axis, resolution, decimals }),
  };
}

function pointsOf(placed: readonly PlacedRow[], valueAt: LaneValue): TimelinePoint[] {
  const points: TimelinePoint[] = [];
  for (const row of placed) {
    const value = valueAt(row);
    if (value !== undefined) points.push({ day: row.day, row: row.row, value });
  }
  return points;
}
