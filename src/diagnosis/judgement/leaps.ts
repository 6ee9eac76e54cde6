import { type Band } from "../../bands/band";
import { written } from "../../quantities";
import { daysBetween, type Entry, shareDrained, tells } from "./entry";
import { sideOf } from "./level";

/** Low, high, low again, or the reverse, in three readings running. */
export function leapsAcross(read: readonly Entry[], band: Band): string[] {
  return (["ec", "ph"] as const).flatMap((name) => {
    const values = read
      .slice(-3)
      .flatMap(({ runoffEc, runoffPh }) => (name === "ec" ? (runoffEc ?? []) : (runoffPh ?? [])));
    const sides = values.map((value) => sideOf(value, name, band)).join();
    if (sides !== "low,high,low" && sides !== "high,low,high") return [];
    const said = values.map((value) => written(value, name).replace(/^pH | mS\/cm$/g, "")).join(", ");
    return [`runoff ${name === "ec" ? "EC" : "pH"} leaps ${said}: no root zone does that`];
  });
}

/** Feed and runoff that move together by so much moved in the meter: pH units, and times in EC. Common practice. */
const together = { ph: 0.6, phApart: 0.3, ecTimes: 1.4, ecApart: 1.15 } as const;
/** Within so many days a buffered pot cannot follow its feed; EC follows sooner. Common practice. */
const fewDays = { ph: 5, ec: 3 } as const;
/** Where more than this part drains, what drains is mostly the feed itself. Common practice. */
const mostlyFeed = 0.5;
/** A leap is looked for in so many of the latest readings. Common practice. */
const latest = 3;

/**
 * Feed and runoff leap from one reading to the next by the same step: the meter moved, for what drains was in the pot
 * before.
 *
 * Errs to doubt: a buffer or a standard costs five minutes. A change of feed that the note tells is none; mineral wool
 * and inert media follow their feed in pH.
 *
 * Source:   common practice
 */
export function leapsTogether(read: readonly Entry[], { medium }: Band): string[] {
  if (medium === "water culture") return [];
  const rows = read.slice(-latest);
  const steps = rows.slice(1).flatMap((now, at) => {
    const before = rows[at];
    const isTold = tells(now, "feed change", "repotting") || (shareDrained(now) ?? 0) > mostlyFeed;
    return before === undefined || isTold ? [] : [[before, now] as const];
  });
  const follows = medium === "mineral wool" || medium === "inert";
  return [
    ...steps.flatMap(([before, now]) => (follows ? [] : phLeap(before, now))),
    ...steps.flatMap(([before, now]) => ecLeap(before, now)),
  ];
}

function phLeap(before: Entry, now: Entry): string[] {
  const [input, runoff] = [
    (now.inputPh ?? NaN) - (before.inputPh ?? NaN),
    (now.runoffPh ?? NaN) - (before.runoffPh ?? NaN),
  ];
  const isSame = Math.sign(input) === Math.sign(runoff) && Math.abs(input - runoff) <= together.phApart + dust;
  const isFar = Math.min(Math.abs(input), Math.abs(runoff)) >= together.ph - dust;
  if (!isSame || !isFar || !isSoon(before, now, fewDays.ph)) return [];
  return [
    `input and runoff pH leap together, by ${signed(input)} and ${signed(runoff)}: a pot does not follow its feed that fast, a pen does`,
  ];
}

function ecLeap(before: Entry, now: Entry): string[] {
  const [input, runoff] = [
    (now.inputEc ?? NaN) / (before.inputEc ?? NaN),
    (now.runoffEc ?? NaN) / (before.runoffEc ?? NaN),
  ];
  const isUp = input >= together.ecTimes && runoff >= together.ecTimes;
  const isDown = input <= 1 / together.ecTimes && runoff <= 1 / together.ecTimes;
  const apart = Math.max(input / runoff, runoff / input);
  if (!(isUp || isDown) || !(apart <= together.ecApart) || !isSoon(before, now, fewDays.ec)) return [];
  return [
    `input and runoff EC leap together, to ${times(input)} and ${times(runoff)} of before: most of what drains was in the pot before, so a meter or its scale changed`,
  ];
}

/** Less than any meter shows. */
const dust = 1e-9;
const isSoon = (before: Entry, now: Entry, days: number): boolean => (daysBetween(before, now) ?? 0) <= days;
const signed = (step: number): string => `${step > 0 ? "+" : ""}${step.toFixed(1)}`;
const times = (ratio: number): string => `${ratio.toFixed(1)} times`;
