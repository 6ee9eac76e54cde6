import { type Band, isOwnBand } from "../../bands/band";
import { type Litres, type Share } from "../../quantities";
import { type CropFound, cropIn } from "./crops";
import { entriesOf, type Entry, isRead } from "./entry";
import { feedOf, type FeedFound } from "./feed";
import { levelOf, type Level, sideOf } from "./level";
import { type PhaseFound, phaseOf } from "./phase";
import { type PlantFound, plantOf } from "./plant";
import { type PotReading } from "./pot-reading";
import { trustIn, type TrustFound } from "./trust";
import { waterBalance, type WaterBalance } from "./uptake";

export interface JudgeOptions {
  /** What part of the water drains, 0 to 1, where the rows do not tell volumes. */
  readonly leachingFraction?: Share | undefined;
  /** The pot's own volume. */
  readonly containerLitres?: Litres | undefined;
}

/** All that the log of one pot tells, before anything is concluded from it. */
export interface Facts {
  readonly band: Band;
  readonly options: JudgeOptions;
  readonly entries: readonly Entry[];
  /** The rows with a runoff reading that are evidence, oldest first. */
  readonly evidence: readonly Entry[];
  readonly phase: PhaseFound;
  readonly trust: TrustFound;
  readonly ec: Level | undefined;
  readonly ph: Level | undefined;
  readonly feed: FeedFound;
  readonly water: WaterBalance;
  readonly plant: PlantFound;
  readonly crop: CropFound | undefined;
  /** The day of the last row, where the log has dates. */
  readonly lastDay: number | undefined;
}

export function factsOf(readings: readonly PotReading[], given: Band, options: JudgeOptions): Facts {
  const entries = entriesOf(readings);
  const crop = cropIn(entries);
  const band = forCrop(given, crop);
  const phase = phaseOf(entries, { containerLitres: options.containerLitres, medium: band.medium });
  const rows = phase.evidence;
  const evidence = rows.filter(isRead);
  const afterFlush = phase.phase === "after a flush";
  const feed = feedOf(rows.length === 0 ? phase.before : rows, {
    all: entries,
    band,
    before: afterFlush ? phase.before : [],
  });
  const water = waterBalance(rows, options.leachingFraction, afterFlush ? phase.before : []);
  return {
    band,
    options,
    entries,
    evidence,
    phase,
    feed,
    water,
    crop,
    trust: trustIn(rows, entries, { band, afterFlush }),
    ec: agreedByFlush(
      levelOf(evidence, "ec", band, band.medium === "bark" ? (feed.waterEc ?? 0) : 0),
      phase,
      band,
    ),
    ph: levelOf(evidence, "ph", band),
    plant: plantOf(afterFlush ? sinceFlush(entries, phase) : entries, water.drinks),
    lastDay: entries.filter(({ day }) => day !== undefined).at(-1)?.day,
  };
}

/** The first reading after a flush that ended above the band too is not alone: the flush's own readings agree. */
function agreedByFlush(ec: Level | undefined, phase: PhaseFound, band: Band): Level | undefined {
  const ended = phase.flush.flatMap(({ runoffEc }) => runoffEc ?? []).at(-1);
  if (phase.phase !== "after a flush" || ec?.witness !== "sole" || ended === undefined) return ec;
  return ec.side === "high" && sideOf(ended, "ec", band) === "high" ? { ...ec, witness: "agreed" } : ec;
}

/** What was seen before a flush is what the flush was for: spoiled leaves do not mend, new notes tell. */
function sinceFlush(entries: readonly Entry[], { flush }: PhaseFound): readonly Entry[] {
  const ended = flush.at(-1)?.place ?? -1;
  return entries.filter(({ place }) => place > ended);
}

/** The crop's own pH limits, where the notes name one that has them and the grower set none. */
function forCrop(band: Band, crop: CropFound | undefined): Band {
  if (crop?.ph === undefined || isOwnBand(band)) return band;
  return { ...band, ph: crop.ph, phAim: crop.phAim ?? (crop.ph[0] + crop.ph[1]) / 2 };
}
