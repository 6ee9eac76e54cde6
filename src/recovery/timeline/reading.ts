import { type Band } from "../../bands/band";
import { rowFlags, type RowFlag } from "../../diagnosis/row-flags";
import { type PlacedRow } from "../../log/in-time";
import { type LogEvent } from "../../log/log";
import { laneDefinitions, type LaneName, type SeriesRole } from "./lanes";

export interface LaneFigure {
  readonly lane: LaneName;
  readonly role: SeriesRole;
  readonly value: number;
}

/** One row as the reader of a point meets it. */
export interface TimelineReading {
  readonly day: number;
  readonly row: number;
  readonly values: readonly LaneFigure[];
  /** Empty when in band, `undefined` when no band is known or no runoff was read. */
  readonly flags: readonly RowFlag[] | undefined;
  readonly events: readonly LogEvent[];
}

/**
 * Values and flags are worked out when they are asked for: thousands of rows are drawn at once, but read one at a time.
 */
export class RowInTime implements TimelineReading {
  readonly day: number;
  readonly row: number;
  /** Not by `#`, which a build for older browsers turns into a map entry for each row. */
  private readonly placed: PlacedRow;
  private readonly band: Band | undefined;

  constructor(placed: PlacedRow, band: Band | undefined) {
    this.day = placed.day;
    this.row = placed.row;
    this.placed = placed;
    this.band = band;
  }

  get values(): readonly LaneFigure[] {
    return laneDefinitions.flatMap(({ name: lane, series }) =>
      series.flatMap(({ role, value: valueAt }) => {
        const value = valueAt(this.placed);
        return value === undefined ? [] : [{ lane, role, value }];
      }),
    );
  }

  get flags(): readonly RowFlag[] | undefined {
    return this.band === undefined ? undefined : rowFlags(this.placed, this.band);
  }

  get events(): readonly LogEvent[] {
    return this.placed.events;
  }
}
