import {
  type Band,
  bandFor,
  ec25,
  feeders,
  type FlushPlan,
  flushPlan,
  type FlushReading,
  flushStanding,
  type FlushStanding,
  flushTarget,
  litres,
  type DrainedMedium,
  drainedMedia,
  ownBand,
  ph,
  Refusal,
} from "../../src/index";
import { flushLabels as labels, mostPortions } from "../templates/flush/labels";

/** A flush sheet as it is filled in: rows counted from 0. */
export interface FlushOnSheet {
  readonly pot: string;
  readonly medium: DrainedMedium | undefined;
  readonly band: Band | undefined;
  readonly containerLitres: number | undefined;
  readonly waterEc: number | undefined;
  readonly typedEc: number | undefined;
  readonly pourPh: number | undefined;
  /** Before the flush, then every portion, as far as they were written. */
  readonly readings: readonly FlushReading[];
  readonly rows: {
    readonly container: number;
    readonly water: number;
    /** The first portion that nothing is written in. */
    readonly next: number | undefined;
  };
  /** The number of that portion. */
  readonly nextPortion: number;
}

type Cells = readonly (readonly unknown[])[];

/** Reads a flush sheet back by its labels, so that rows that a person added or moved change nothing. */
export function flushOnSheet(cells: Cells): FlushOnSheet {
  const beside = (label: string, column = 1): unknown => cells[rowOf(cells, label)]?.[column];
  const figure = (label: string, column = 1): number | undefined => number(beside(label, column));
  const medium = drainedMedia.find((each) => each === beside(labels.medium));
  const band = bandOf(medium, beside(labels.feeder), [1, 2, 3, 4].map((column) => figure(labels.limits, column)));
  const portionRows = Array.from({ length: mostPortions }, (_, i) => rowOf(cells, labels.portion(i + 1)));
  const before: FlushReading = { ph: figure(labels.phNow), ec: figure(labels.ecNow), litres: undefined };
  const portions = portionRows.map((row) => readingAt(cells[row]));
  const filled =
    portions.map((reading) => Object.values(reading).some((value) => value !== undefined)).lastIndexOf(true) + 1;
  const pot = beside(labels.pot);
  return {
    pot: typeof pot === "string" || typeof pot === "number" ? String(pot) : "",
    medium,
    band,
    containerLitres: figure(labels.container),
    waterEc: figure(labels.water),
    typedEc: figure(labels.typed),
    pourPh: figure(labels.phTyped) ?? band?.phAim,
    readings: [before, ...portions.slice(0, filled)],
    rows: { container: rowOf(cells, labels.container), water: rowOf(cells, labels.water), next: portionRows[filled] },
    nextPortion: filled + 1,
  };
}

/** Where the flush stands, once container and water are known; until then what is missing, and never a plan. */
export interface FlushView {
  readonly targetEc: number;
  readonly plan: FlushPlan;
  readonly standing: FlushStanding;
}

/** `undefined` while something is missing; a Refusal where the figures do not go together. */
export function flushView({
  medium,
  band,
  containerLitres,
  waterEc,
  typedEc,
  readings,
}: FlushOnSheet): FlushView | Refusal | undefined {
  const [first] = readings;
  if (medium === undefined || band === undefined || containerLitres === undefined || waterEc === undefined)
    return undefined;
  if (first?.ec === undefined || first.ph === undefined) return undefined;
  try {
    const [container, water] = [litres(containerLitres), ec25(waterEc)];
    const targetEc = typedEc === undefined ? flushTarget(ec25(band.ec[1]), water) : ec25(typedEc);
    const plan = flushPlan(ec25(first.ec), targetEc, { containerLitres: container, waterEc: water, medium });
    return {
      targetEc,
      plan,
      standing: flushStanding(readings, { band, containerLitres: container, waterEc: water, targetEc, plan }),
    };
  } catch (problem) {
    if (problem instanceof Refusal) return problem;
    throw problem;
  }
}

const rowOf = (cells: Cells, label: string): number => cells.findIndex(([first]) => first === label);

const number = (cell: unknown): number | undefined =>
  typeof cell === "number" && Number.isFinite(cell) ? cell : undefined;

function readingAt(row: readonly unknown[] | undefined): FlushReading {
  const [poured, runoffPh, runoffEc] = [row?.[2], row?.[3], row?.[4]].map(number);
  return { ph: runoffPh, ec: runoffEc, litres: poured === undefined || poured < 0 ? undefined : litres(poured) };
}

/** The medium's limits, unless the sheet holds others: then those are the grower's own. */
function bandOf(
  medium: DrainedMedium | undefined,
  feeder: unknown,
  shown: readonly (number | undefined)[],
): Band | undefined {
  const table = medium === undefined ? undefined : bandFor(medium, feeders.find((each) => each === feeder) ?? "medium");
  const [phLow, phHigh, ecLow, ecHigh] = shown;
  if (phLow === undefined || phHigh === undefined || ecLow === undefined || ecHigh === undefined) return table;
  if (table !== undefined && [...table.ph, ...table.ec].every((limit, i) => limit === shown[i])) return table;
  try {
    return ownBand(ph(phLow), ph(phHigh), ec25(ecLow), ec25(ecHigh));
  } catch (problem) {
    if (problem instanceof Refusal) return table;
    throw problem;
  }
}
