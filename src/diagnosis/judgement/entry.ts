import { weakestFeedEc } from "../root-zone-reading";
import { eventsIn } from "../../log/notes/notes";
import { type LogEvent, type LogEventKind } from "../../log/log";
import { isPlausible } from "../../quantities";
import { figureIn } from "./note-figures";
import { type PotReading } from "./pot-reading";

/** A reading with its place among those given, and what its note tells of. */
export interface Entry extends PotReading {
  readonly place: number;
  readonly events: readonly LogEvent[];
}

const none: readonly LogEvent[] = [];

/** The readings in the order given, each note read once. */
export function entriesOf(readings: readonly PotReading[]): readonly Entry[] {
  const known = new Map<string, readonly LogEvent[]>();
  const told = (notes: string | undefined): readonly LogEvent[] => {
    if (notes === undefined || notes === "") return none;
    const found = known.get(notes) ?? eventsIn(notes);
    known.set(notes, found);
    return found;
  };
  return readings.map((reading, place) => entryOf(reading, place, reading.events ?? told(reading.notes)));
}

/** Field by field: a spread costs most of the time of a bench of a hundred thousand rows. */
const entryOf = (reading: PotReading, place: number, events: readonly LogEvent[]): Entry => ({
  place,
  events,
  day: reading.day,
  inputPh: reading.inputPh,
  inputEc: reading.inputEc,
  runoffPh: reading.runoffPh,
  runoffEc: reading.runoffEc,
  inputLitres: reading.inputLitres,
  runoffLitres: reading.runoffLitres,
  solutionCelsius: reading.solutionCelsius,
  airCelsius: reading.airCelsius,
  humidityPercent: reading.humidityPercent,
  notes: reading.notes,
  plant: reading.plant,
  unread: reading.unread,
});

export const tells = ({ events }: Entry, ...kinds: readonly LogEventKind[]): boolean =>
  events.some(({ kind }) => kinds.includes(kind));

/** Whether the runoff was measured: only then does a row say something of the root zone. */
export const isRead = ({ runoffPh, runoffEc }: Entry): boolean => runoffPh !== undefined || runoffEc !== undefined;

/** Whether a row holds anything at all. */
export const isFilled = (entry: Entry): boolean =>
  isRead(entry) ||
  [entry.inputPh, entry.inputEc, entry.inputLitres, entry.runoffLitres, entry.notes, entry.plant].some(
    (each) => each !== undefined && each !== "",
  );

/** Water, not feed, went in: said so, or too weak for any feed. */
export const isWater = (entry: Entry): boolean =>
  (tells(entry, "plain water") && !isStrongerThanItsWater(entry)) ||
  (entry.inputEc !== undefined && entry.inputEc < weakestFeedEc);

/** Feed, and no slip of the meter, went in. */
export const isFeed = (entry: Entry): boolean =>
  entry.inputEc !== undefined && isPlausible(entry.inputEc, "ec") && !isWater(entry);

/** Feed on top of a water that the note speaks of, by this much more than it. Common practice. */
const feedOnTop = 1.15;

function isStrongerThanItsWater(entry: Entry): boolean {
  const waterEc = figureIn([entry], "water EC");
  return waterEc !== undefined && (entry.inputEc ?? 0) > feedOnTop * waterEc;
}

/**
 * The share that drained, 0 to 1, where both volumes are told and can be; 0 L beside a runoff that was read is a
 * blank.
 */
export function shareDrained(entry: Entry): number | undefined {
  const { inputLitres, runoffLitres } = entry;
  if (inputLitres === undefined || runoffLitres === undefined || !(inputLitres > 0) || !(runoffLitres <= inputLitres))
    return undefined;
  return runoffLitres === 0 && isRead(entry) ? undefined : runoffLitres / inputLitres;
}

/** Millionths of a litre: what is left of a difference beyond them comes from the unit it was logged in. */
const litresDecimals = 6;

/** Litres that stayed or were drunk. */
export function litresKept(entry: Entry): number | undefined {
  const { inputLitres = 0, runoffLitres = 0 } = entry;
  return shareDrained(entry) === undefined ? undefined : Number((inputLitres - runoffLitres).toFixed(litresDecimals));
}

/**
 * Days since an entry as people count them: by the calendar where the later one tells no hour, for "the day after" is
 * day 1 whatever the hour of the first.
 */
export function calendarDays(earlier: Entry | undefined, later: Entry | undefined): number | undefined {
  const days = daysBetween(earlier, later);
  if (days === undefined || later?.day === undefined || earlier?.day === undefined) return undefined;
  return Number.isInteger(later.day) ? later.day - Math.floor(earlier.day) : days;
}

/** From one entry to a later one, in days; `undefined` in a log without dates. */
export const daysBetween = (earlier: Entry | undefined, later: Entry | undefined): number | undefined =>
  earlier?.day === undefined || later?.day === undefined ? undefined : later.day - earlier.day;
