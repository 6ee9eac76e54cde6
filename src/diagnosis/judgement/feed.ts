import { type Band } from "../../bands/band";
import { isAbove, isBelow } from "../../maths/compare";
import { median } from "../../maths/median";
import { quantities } from "../../quantities";
import { daysBetween, type Entry, isFeed, isWater, tells } from "./entry";
import {
  chosenFeedDays,
  chosenFeedReadings,
  chosenFeedScatter,
  leapFactor,
  nearLimit,
  saltyWaterEc,
  toleranceOf,
} from "./limits";
import { figureIn, noted } from "./note-figures";
import { waterEcOf } from "./source-water";
import { movesStepwise, usualBefore, usualBeforeFlush } from "./usual-feed";

/** What went into the pot. */
export interface FeedFound {
  /** EC of the latest feed, mS/cm; `undefined` where no feed was measured. */
  readonly ec: number | undefined;
  /** What it was before the latest change, where enough feeds tell. */
  readonly usual: number | undefined;
  /** Above its limit by more than a meter can be off. */
  readonly tooStrong: boolean;
  /** Near its limit or above it. */
  readonly nearLimit: boolean;
  /** Far from what it was, and nobody said why. */
  readonly mixedWrong: "strong" | "weak" | undefined;
  /** Strong on purpose: it has stood above the limit, steady, for weeks. */
  readonly chosen: boolean;
  /** How many days or readings it has stood so. */
  readonly chosenFor: string;
  /** The latest pH poured, and on which side of the band it is. */
  readonly ph: number | undefined;
  readonly phSide: "inside" | "low" | "high" | undefined;
  /** The last thing poured was water, not feed. */
  readonly isWaterNow: boolean;
  /** EC of the water by itself, mS/cm, where a row or a note tells it. */
  readonly waterEc: number | undefined;
  readonly waterIsSalty: boolean;
  /** A note tells of softened water: sodium stands in it for calcium. */
  readonly softened: boolean;
  /** A note tells of an acid feed, or one of ammonium. */
  readonly isAcid: boolean;
  /** Alkalinity that a note tells, mg/L as CaCO3. */
  readonly alkalinity: number | undefined;
}

interface FeedLog {
  readonly all: readonly Entry[];
  /** The rows before a flush that is just over: what is stepped up since is measured against these. */
  readonly before: readonly Entry[];
  readonly band: Band;
}

/** What went in, from the rows that are evidence; the water's own figures from the whole log. */
export function feedOf(rows: readonly Entry[], { all, before, band }: FeedLog): FeedFound {
  const feeds = rows.filter(isFeed);
  const ec = feeds.at(-1)?.inputEc;
  const beforeFlush = before.filter(isFeed);
  const { usual, changedAt } = beforeFlush.length === 0 ? usualBefore(feeds) : usualBeforeFlush(beforeFlush);
  const leap = ec === undefined || usual === undefined ? 1 : ec / usual;
  const isMeant = rows.some(
    (entry) => changedAt !== undefined && Math.abs(entry.place - changedAt) <= 1 && tells(entry, "feed change"),
  );
  const isRamp = beforeFlush.length > 0;
  const off = leap >= leapFactor ? "strong" : leap <= 1 / leapFactor && !isRamp ? "weak" : undefined;
  // One that fell step by step is still looked into: recipe, dosing, meter.
  const isStepwise = off === "strong" && beforeFlush.length === 0 && movesStepwise(feeds);
  const limit = band.feedEcHigh;
  const waterEc = waterEcOf(all);
  const softened = noted(all, "softened water");
  const poured = rows.filter(({ inputPh }) => inputPh !== undefined).at(-1)?.inputPh;
  const { resolution } = quantities.ec;
  return {
    ec,
    usual,
    tooStrong:
      ec !== undefined && isAbove(ec, limit + toleranceOf("ec", limit, { ...band, sample: "1:2 extract" }), resolution),
    nearLimit: ec !== undefined && !isBelow(ec, nearLimit * limit, resolution),
    mixedWrong: isMeant || isStepwise ? undefined : off,
    ...chosenStrength(feeds, limit),
    ph: poured,
    phSide: poured === undefined ? undefined : phSideOf(poured, band),
    isWaterNow: rows
      .filter(({ inputEc, events }) => inputEc !== undefined || events.length > 0)
      .slice(-1)
      .some(isWater),
    waterEc,
    waterIsSalty: softened || (waterEc !== undefined && waterEc >= saltyWaterEc),
    softened,
    isAcid: noted(all, "acid feed"),
    alkalinity: figureIn(all, "alkalinity"),
  };
}

function phSideOf(ph: number, band: Band): "inside" | "low" | "high" {
  const off = toleranceOf("ph", 0, { ...band, sample: "1:2 extract" });
  if (!isAbove(ph, band.ph[0] - off, quantities.ph.resolution)) return "low";
  return isBelow(ph, band.ph[1] + off, quantities.ph.resolution) ? "inside" : "high";
}

function chosenStrength(
  feeds: readonly Entry[],
  limit: number,
): { readonly chosen: boolean; readonly chosenFor: string } {
  let start = feeds.length;
  while (start > 0 && (feeds[start - 1]?.inputEc ?? 0) > nearLimit * limit) start--;
  const strong = feeds.slice(start);
  const ecs = strong.flatMap(({ inputEc }) => inputEc ?? []);
  const days = daysBetween(strong[0], strong.at(-1));
  const isLong =
    strong.length >= chosenFeedReadings &&
    (days === undefined ? strong.length >= chosenFeedDays : days >= chosenFeedDays);
  const middle = ecs.length === 0 ? NaN : median(ecs);
  const isSteady = ecs.every((ec) => Math.abs(ec - middle) <= chosenFeedScatter * middle);
  return {
    chosen: isLong && isSteady,
    chosenFor: days === undefined ? `${strong.length} readings` : `${Math.round(days)} days`,
  };
}
