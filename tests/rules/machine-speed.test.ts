import { describe, expect, it } from "vitest";
import { filesUnder } from "./project-files";

/** A clock read in a test, and a little later something that must be less: a slower machine would turn it red. */
const timed = /(?:performance|Date)\.now\(\)[\s\S]{0,400}toBeLessThan/;

const tests = filesUnder("tests", /\.test\.ts$/).filter(({ path }) => !path.includes("machine-speed"));

describe("the tests", () => {
  it("hold on a machine of any speed: none asks for a time to be short", () => {
    expect(tests.length).toBeGreaterThan(100);
    expect(tests.filter(({ text }) => timed.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it("would be caught if one did", () => {
    expect("const start = performance.now();\nawait read();\nexpect(performance.now() - start).toBeLessThan(1000);").toMatch(timed);
    expect("expect(performance.now() - start).toBeGreaterThanOrEqual(55)").not.toMatch(timed);
  });
});
