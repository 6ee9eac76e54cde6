import { afterAll, describe, expect, it } from "vitest";
import { caseBook, type PotCase } from "./case-book";
import { faultsOf } from "./compare";
import { judgedPots } from "./judged";

const pending: string[] = [];

/** What is wrong with what is said of a case; its bench's order included. */
function faults(pot: PotCase): string[] {
  const pots = judgedPots(pot);
  const order = pots.map(({ vessel }) => vessel ?? "the only pot");
  const [worst] = pots;
  const isInOrder = pot.order === undefined || pot.order.join() === order.join();
  return [
    ...(worst === undefined ? ["no pot"] : faultsOf(worst.judgement, pot.say)),
    ...(pot.worst === undefined || pot.worst === order[0] ? [] : [`worst is ${order[0] ?? ""}, not ${pot.worst}`]),
    ...(isInOrder ? [] : [`order ${order.join(", ")}, not ${pot.order.join(", ")}`]),
  ];
}

describe.each(caseBook())("$about", ({ cases }) => {
  it.each(cases.map((pot) => [pot.title, pot] as const))("%s", (title, pot) => {
    const found = faults(pot);
    if (pot.pending === undefined) {
      expect(found).toEqual([]);
    } else {
      expect(found, `met: take "pending" away from "${title}"`).not.toEqual([]);
      pending.push(`${title}: ${pot.pending}`);
    }
  });
});

afterAll(() => {
  if (pending.length > 0) process.stdout.write(`${pending.length} cases are pending:\n  ${pending.join("\n  ")}\n`);
});
