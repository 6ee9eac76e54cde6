import { type Act, type PotJudgement, urgencies, type Urgency } from "../../src/index";
import { type Expected } from "./case-book";

const rank = (urgency: Urgency): number => urgencies.indexOf(urgency);
const list = (words: readonly string[]): string => words.join(" | ");

/** All the text of a judgement that a grower reads. */
export const textOf = ({ course, reasons }: PotJudgement): string =>
  [...reasons, ...course.map(({ says }) => says)].join("\n");

/** Where a judgement is not what an expert would say, in words; empty when he would sign it. */
export function faultsOf(found: PotJudgement, say: Expected): string[] {
  const acts = found.course.map(({ act }) => act);
  return [...wordFaults(found, say), ...actFaults(acts, say), ...textFaults(found, say)];
}

function wordFaults({ verdict, urgency, phase, causes }: PotJudgement, say: Expected): string[] {
  const [least, most] = say.urgency;
  const missing = (say.causes ?? []).filter((cause) => !causes.includes(cause));
  const wrong = (say.notCauses ?? []).filter((cause) => causes.includes(cause));
  return [
    ...(say.verdict.includes(verdict) ? [] : [`verdict "${verdict}", not ${list(say.verdict)}`]),
    ...(rank(urgency) < rank(least) ? [`urgency "${urgency}", at least ${least}`] : []),
    ...(rank(urgency) > rank(most) ? [`urgency "${urgency}", at most ${most}`] : []),
    ...(say.phase === undefined || say.phase === phase ? [] : [`phase "${phase}", not ${say.phase}`]),
    ...missing.map((cause) => `cause "${cause}" is not named (${list(causes)})`),
    ...wrong.map((cause) => `cause "${cause}" is named`),
  ];
}

function actFaults(acts: readonly Act[], say: Expected): string[] {
  const [first] = acts;
  const lacking = (say.anyOf ?? []).filter((any) => !any.some((act) => acts.includes(act)));
  const isFirst = say.first === undefined || (first !== undefined && say.first.includes(first));
  return [
    ...(isFirst ? [] : [`first comes "${first ?? "nothing"}", not ${list(say.first)}`]),
    ...(say.must ?? []).filter((act) => !acts.includes(act)).map((act) => `no "${act}" in: ${list(acts)}`),
    ...lacking.map((any) => `none of ${list(any)} in: ${list(acts)}`),
    ...say.mustNot.filter((act) => acts.includes(act)).map((act) => `"${act}" stands in: ${list(acts)}`),
  ];
}

function textFaults(found: PotJudgement, say: Expected): string[] {
  const text = textOf(found);
  const silent = (say.tells ?? []).filter((each) => !new RegExp(each, "i").test(text));
  const untrue = (say.notTells ?? []).filter((each) => new RegExp(each, "i").test(text));
  return [...silent.map((each) => `says nothing of /${each}/`), ...untrue.map((each) => `says /${each}/`)];
}
