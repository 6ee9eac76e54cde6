import { type CourseStep } from "../pot-judgement";
import { type Act, type When } from "../words";

interface Figures {
  readonly litres?: number | undefined;
  readonly ec?: number | undefined;
  readonly ph?: number | undefined;
  readonly share?: number | undefined;
}

/** Figures of a course are kept to thousandths: nobody can act on more. */
const kept = (value: number): number => Number(value.toFixed(3));

/** One step; a figure that is not known is left out. */
export function step(act: Act, when: When, says: string, figures: Figures = {}): CourseStep {
  const told = Object.entries(figures as Record<string, number | undefined>).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, kept(value)] as const],
  );
  return { act, when, says, ...Object.fromEntries(told) };
}

/** Acts that never stand in one course. "carry on" stands alone. */
const exclusive: readonly (readonly [Act, Act])[] = [
  ["raise the feed", "lower the feed"],
  ["flush", "stop flushing"],
  ["flush", "go on flushing"],
  ["go on flushing", "stop flushing"],
  ["flush", "water less"],
  ["water less", "let more run off"],
  ["water less", "water more often"],
  ["feed by the ramp", "raise the feed"],
  ["repot", "flush"],
  ["raise the feed", "dilute the tank"],
  ["raise the feed", "flush"],
  ["raise the feed", "go on flushing"],
  ["go on flushing", "feed by the ramp"],
  ["flush", "reset the pH"],
  ["flush", "re-wet slowly"],
];

/**
 * A course in which no two steps exclude each other and only measuring stands twice: what comes first stands. The
 * builders see to it; this holds them to it.
 */
export function settled(steps: readonly CourseStep[]): readonly CourseStep[] {
  const course: CourseStep[] = [];
  for (const each of steps) {
    const isSaid = course.some(
      ({ act, when }) => act === each.act && (when === each.when || act !== "measure again now"),
    );
    const excluded = course.some(({ act }) =>
      exclusive.some(([a, b]) => (a === act && b === each.act) || (b === act && a === each.act)),
    );
    if (!isSaid && !excluded && !(each.act === "carry on" && course.length > 0)) course.push(each);
  }
  return course;
}

/** The moment a step falls due, counted from the day of the last row, or of the flush. */
const dueDays: Readonly<Partial<Record<When, number>>> = {
  "24 h after": 1,
  "48 h after": 2,
  "in 3 to 7 days": 3,
  "in a week": 7,
};

/** The steps with their dates, where the log has dates; after a flush that is ordered now they count from now. */
export function dated(
  steps: readonly CourseStep[],
  lastDay: number | undefined,
  flushDay: number | undefined,
): readonly CourseStep[] {
  if (lastDay === undefined) return steps;
  const isWashedNow = steps.some(({ act }) => act === "flush" || act === "reset the pH");
  return steps.map((each) => {
    const due = dueDays[each.when];
    const from = each.when.endsWith("after") ? (isWashedNow ? lastDay : (flushDay ?? lastDay)) : lastDay;
    return due === undefined ? each : { ...each, at: from + due };
  });
}
