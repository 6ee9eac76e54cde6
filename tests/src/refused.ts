import { expect } from "vitest";
import { Refusal, type RefusalCode } from "../../src/index";

/** Holds that a formula refuses with this code, and that its message says this. */
export function expectRefusal(formula: () => unknown, code: RefusalCode, says: string): void {
  let problem: unknown;
  try {
    problem = { answered: formula() };
  } catch (thrown) {
    problem = thrown;
  }
  expect(problem).toBeInstanceOf(Refusal);
  expect({ code: (problem as Refusal).code, message: (problem as Refusal).message }).toEqual({ code, message: expect.stringContaining(says) as string });
}
