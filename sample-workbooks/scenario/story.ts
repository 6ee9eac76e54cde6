import { type Entry, type Reading } from "./diary";
import { measured, without } from "./meter";
import { drink, type Pot, pour, type Solution, type Thirst } from "./pot";
import { noise } from "./random";

/** What a grower does with one pot, day by day. */
export interface Story {
  readonly seed: number;
  readonly vessel: string;
  readonly days: number;
  /** 1 unless told otherwise; `thirst` is then what the plant takes between two waterings. */
  readonly wateredEvery?: number;
  readonly pot: Pot;
  /** What is poured on that day, portion by portion; an ordinary day has one. */
  readonly feed: (day: number) => readonly Solution[];
  readonly thirst: (day: number) => Thirst;
  readonly celsius: (day: number) => number;
  readonly notes: Readonly<Record<number, string>>;
  /** Days on which nothing was written down, though the pot was watered. */
  readonly unwritten: readonly number[];
  readonly notMeasured: Readonly<Record<number, readonly Reading[]>>;
}

/** A day of a story: the line in the log, and a line for each portion on a day with several. */
export interface ToldDay {
  readonly entry: Entry;
  readonly portions: readonly Entry[];
}

/** Lives through the story and answers what the grower wrote. */
export function tell(story: Story): ToldDay[] {
  const scatter = noise(story.seed);
  const told: ToldDay[] = [];
  let { pot } = story;
  for (let day = 0; day < story.days; day += story.wateredEvery ?? 1) {
    const weather = 1 + scatter.around0(0.05);
    const thirst = story.thirst(day);
    pot = drink(pot, { ...thirst, litres: thirst.litres * weather });
    const portions: Entry[] = [];
    const poured = story.feed(day);
    let fedLitres = 0;
    let drainedLitres = 0;
    for (const fed of poured) {
      const after = pour(pot, fed);
      pot = after.pot;
      fedLitres += fed.litres;
      drainedLitres += after.drained.litres;
      const celsius = story.celsius(day) + (weather - 1) * 15;
      portions.push(measured({ day, vessel: story.vessel, fed, drained: after.drained, celsius }, scatter));
    }
    const last = portions.at(-1);
    if (last === undefined || story.unwritten.includes(day)) continue;
    const whole = portions.length === 1 ? last : { ...last, feedLitres: tenths(fedLitres), runoffLitres: tenths(drainedLitres) };
    const entry = { ...without(whole, story.notMeasured[day] ?? []), note: story.notes[day] };
    told.push({ entry, portions });
  }
  return told;
}

const tenths = (litres: number): number => Number(litres.toFixed(1));

/** A value that goes evenly from one day's to another's and stays at the ends. */
export function ramp(day: number, [fromDay, from]: readonly [number, number], [toDay, to]: readonly [number, number]): number {
  const share = Math.min(1, Math.max(0, (day - fromDay) / (toDay - fromDay)));
  return from + (to - from) * share;
}
