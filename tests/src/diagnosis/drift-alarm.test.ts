import { describe, expect, it } from "vitest";
import { driftAlarm } from "../../../src/index";

/** Normal values by the polar method on the minimal standard generator, so that a run can be repeated. */
function normal(): () => number {
  let state = 7;
  const uniform = (): number => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

describe("driftAlarm", () => {
  // The same experiment in another program, 20,000 logs each: at the 20th reading 0.270, 0.137, 0.057; at any of the 20 readings
  // 0.389, 0.235, 0.134; scatter of 2,000 logs: 0.011.
  it.each([[5, 0.27, 0.389], [10, 0.137, 0.235], [20, 0.057, 0.134]])(
    "a baseline of %d: %d of steady logs ring falsely at the 20th reading, %d at some time within the 20",
    (baseline, atLast, atAnyTime) => {
      const [next, logs] = [normal(), 2000];
      const rings = (values: readonly number[]): boolean => driftAlarm(values, baseline).answer !== "steady";
      let [last, any] = [0, 0];
      for (let log = 0; log < logs; log++) {
        const values = Array.from({ length: baseline + 20 }, () => 6 + next());
        if (rings(values)) last++;
        if (values.some((_, at) => at >= baseline && rings(values.slice(0, at + 1)))) any++;
      }
      expect(Math.abs(last / logs - atLast)).toBeLessThan(0.033);
      expect(Math.abs(any / logs - atAnyTime)).toBeLessThan(0.036);
    },
  );

  it("a display that stays one step off, 6.01 after five readings of 6.00, never rings; 0.3 off rings at the third", () => {
    const after = (value: number, count: number): string => driftAlarm([6, 6, 6, 6, 6, ...new Array<number>(count).fill(value)]).answer;
    expect(after(6.01, 200)).toBe("steady");
    expect([1, 2, 3].map((count) => after(6.3, count))).toEqual(["steady", "steady", "drifting up"]);
  });

  it("one reading far off, on a log whose sum is at rest, adds at most 3.5 of 5 and does not ring", () => {
    expect(driftAlarm([6, 6.1, 5.9, 6, 6, 13]).answer).toBe("steady");
  });

  it("the same log in mS/cm and in uS/cm says the same", () => {
    const log = [2.1, 2.14, 2.08, 2.1, 2.12, 2.3, 2.4, 2.45, 2.5];
    expect(driftAlarm(log.map((value) => Math.round(1000 * value))).answer).toBe(driftAlarm(log).answer);
  });

  it("a step of 2 scatters after a baseline of 10 rings within 10 readings in 98 of 100 logs (NumPy, 20,000 logs)", () => {
    const next = normal();
    let rings = 0;
    for (let log = 0; log < 4000; log++) {
      const values = Array.from({ length: 20 }, (_, at) => 6 + next() + (at < 10 ? 0 : 2));
      if (driftAlarm(values, 10).answer === "drifting up") rings++;
    }
    expect(Math.abs(rings / 4000 - 0.98)).toBeLessThan(0.012);
  });
});
