import { describe, expect, it } from "vitest";
import { actWords, causeWords, media, phases, urgencies, verdictWords } from "../../src/index";
import { caseBook, type PotCase } from "./case-book";
import { readCase } from "./case-log";

const cases = caseBook().flatMap(({ cases: those }) => those);
const each = cases.map((pot) => [pot.title, pot] as const);
const bands = cases.flatMap(({ band }) => band ?? []);

const fields = "title band limits log worst order say why source pending".split(" ");
const sayFields = "verdict urgency phase causes notCauses first must anyOf mustNot tells notTells".split(" ");
const howFar = /read|common practice|memory|cop(y|ies)|abstract|balance|not seen/;
const strangers = (object: object, known: readonly string[]): string[] =>
  Object.keys(object).filter((key) => !known.includes(key));

describe("the case book", () => {
  it("holds at least 75 pots, each with a title of its own", () => {
    expect(cases.length).toBeGreaterThanOrEqual(75);
    expect(new Set(cases.map(({ title }) => title)).size).toBe(cases.length);
  });

  it("has pots of every medium, of every phase, and with either sign of pH", () => {
    for (const medium of media) expect(bands.some((band) => band.startsWith(medium)), medium).toBe(true);
    for (const phase of phases) expect(cases.some(({ say }) => say.phase === phase), phase).toBe(true);
    const causes = cases.flatMap(({ say }) => say.causes ?? []);
    expect(causes).toEqual(expect.arrayContaining(["acid feed suspected", "alkalinity suspected"]));
  });

  it("has pots sampled in each of the four ways", () => {
    for (const sample of ["pour-through", "1:2 extract", "saturated extract"]) {
      expect(bands.filter((band) => band.endsWith(sample)).length, sample).toBeGreaterThan(1);
    }
    expect(bands.filter((band) => band.split(",").length < 3).length).toBeGreaterThan(20);
  });

  it("names every verdict, cause and act at least once", () => {
    const said = cases.map(({ say }) => say);
    const left = <T>(words: readonly T[], used: readonly T[]): T[] => words.filter((word) => !used.includes(word));
    expect(left(verdictWords, said.flatMap(({ verdict }) => verdict))).toEqual([]);
    expect(left(causeWords, said.flatMap(({ causes = [] }) => causes))).toEqual(["not known"]);
    expect(left(actWords, said.flatMap(({ must = [], anyOf = [] }) => [...must, ...anyOf.flat()]))).toEqual([]);
  });

  it.each(each)("%s: is written in the words of a judgement", (_, pot) => {
    expect(wrongWords(pot)).toEqual([]);
  });

  it.each(each)("%s: has a log that the reader reads without a question", (_, pot) => {
    const { questions, rows, setAside } = readCase(pot);
    expect(questions.map(({ text }) => text)).toEqual([]);
    expect(setAside).toEqual([]);
    expect(rows.length).toBe(pot.log.length - 1);
  });
});

const unknown = <T>(used: readonly T[] = [], words: readonly T[]): string[] =>
  used.filter((word) => !words.includes(word)).map(String);

function wrongWords(pot: PotCase): string[] {
  const { say } = pot;
  const wanted = [...(say.first ?? []), ...(say.must ?? []), ...(say.anyOf ?? []).flat()];
  const [least, most] = say.urgency.map((word) => urgencies.indexOf(word));
  return [
    ...strangers(pot, fields),
    ...strangers(say, sayFields),
    ...unknown(say.verdict, verdictWords),
    ...unknown(say.urgency, urgencies),
    ...unknown([...(say.causes ?? []), ...(say.notCauses ?? [])], causeWords),
    ...unknown([...wanted, ...say.mustNot], actWords),
    ...say.mustNot.filter((act) => wanted.includes(act)).map((act) => `${act}: wanted and forbidden`),
    ...(say.verdict.length === 0 ? ["no verdict"] : []),
    ...(say.mustNot.length === 0 ? ["forbids nothing"] : []),
    ...((least ?? 0) > (most ?? 0) ? ["urgency the wrong way round"] : []),
    ...((pot.band === undefined) === (pot.limits === undefined) ? ["a band or limits, and not both"] : []),
    ...(pot.why.length < 5 ? ["no why"] : []),
    ...(howFar.test(pot.source) ? [] : ["does not say how far the source was read"]),
    ...(pot.pending?.trim() === "" ? ["pending without a reason"] : []),
    ...(pot.order !== undefined && pot.order[0] !== pot.worst ? ["the order does not begin with the worst"] : []),
  ];
}
