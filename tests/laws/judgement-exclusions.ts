import { type Act, actWords, type PotJudgement } from "../../src/index";

/** Acts that no course may hold together, with the reason. */
export const excluding: readonly (readonly [Act, Act, string])[] = [
  ["raise the feed", "lower the feed", "one feed goes one way"],
  ["raise the feed", "dilute the tank", "one tank goes one way"],
  ["raise the feed", "flush", "salt goes out before feed comes in"],
  ["raise the feed", "go on flushing", "salt goes out before feed comes in"],
  ["raise the feed", "feed by the ramp", "the ramp is what raises it"],
  ["flush", "stop flushing", "one order at a time"],
  ["flush", "go on flushing", "a flush under way is not begun"],
  ["go on flushing", "stop flushing", "one order at a time"],
  ["flush", "water less", "a flush is water"],
  ["let more run off", "water less", "more runoff is more water"],
  ["water more often", "water less", "one way at a time"],
  ["go on flushing", "feed by the ramp", "the ramp begins when the flush ends"],
  ["flush", "reset the pH", "salt first, then pH"],
  ["flush", "re-wet slowly", "a dry root ball is not washed"],
];

/** Acts that pour acid, base or much water, and so never rest on a meter in doubt. */
export const doses: readonly Act[] = ["flush", "go on flushing", "reset the pH", "treat the alkalinity", "steer the pH", "mend the input pH"];

/** Acts on the pH of the root zone; while its salt is up they wait. */
export const actsOnPh: readonly Act[] = ["reset the pH", "steer the pH", "treat the alkalinity"];

/** A reading may be due several times; whatever else is to be done stands once. */
const repeated = (act: Act, acts: readonly Act[]): boolean =>
  act !== "measure again now" && acts.filter((each) => each === act).length > 1;

/** What a course breaks, in words; empty when it can be followed from first to last. */
export function contradictions({ verdict, causes, course }: PotJudgement): string[] {
  const acts = course.map(({ act }) => act);
  const has = (act: Act): boolean => acts.includes(act);
  const pairs = excluding.filter(([one, other]) => has(one) && has(other));
  const isBoth = verdict === "salt buildup and pH out of range";
  const doubted = verdict === "check the meter" || causes.includes("meter doubted");
  return [
    ...(has("carry on") && acts.length > 1 ? [`carry on with ${acts.join(", ")}`] : []),
    ...pairs.map(([one, other, why]) => `${one} with ${other}: ${why}`),
    ...(doubted ? doses.filter(has).map((act) => `${act} on a doubted meter`) : []),
    ...(isBoth ? actsOnPh.filter(has).map((act) => `${act} before the salt is down`) : []),
    ...actWords.filter((act) => repeated(act, acts)).map((act) => `${act} twice`),
  ];
}
