import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Band, bandFor, judge, type PotJudgement, type PotReading, urgencies } from "../../src/index";
import { anyBand, potLog } from "./judgement-logs";
import { times } from "./times";

const many = times(2000);
const rank = ({ urgency }: PotJudgement): number => urgencies.indexOf(urgency);
const isSalty = ({ verdict }: PotJudgement): boolean => verdict.includes("salt buildup");
const isDoubted = ({ verdict, causes }: PotJudgement): boolean =>
  verdict === "check the meter" || causes.includes("meter doubted");

/** Above a limit by more than the drain of soil can be off, so that all readings agree that it is high. */
const clearlyAbove = 1.5;

/** Logs whose every runoff EC stands clearly above the band: nothing but salt to be worse, and no reading alone. */
const salty = (log: readonly PotReading[], band: Band): PotReading[] =>
  log.map(({ runoffEc, ...row }) => ({ ...row, runoffEc: runoffEc && Math.max(runoffEc, clearlyAbove * band.ec[1]) }));

const quiet = (log: readonly PotReading[]): PotReading[] => log.map((row) => ({ ...row, notes: undefined }));
const withoutVolumes = (log: readonly PotReading[]): PotReading[] =>
  log.map((row) => ({ ...row, inputLitres: undefined, runoffLitres: undefined }));

function notMilder(before: PotJudgement, after: PotJudgement): void {
  if (isDoubted(before) || isDoubted(after)) return;
  const words = [before, after].map(({ verdict, urgency }) => `${verdict}, ${urgency}`).join(" -> ");
  expect(rank(after), words).toBeGreaterThanOrEqual(rank(before));
}

describe("judgement: worse is never less urgent", () => {
  it("volumes alone never make salt milder", () => {
    fc.assert(
      fc.property(potLog, anyBand, (log, band) => {
        const bare = judge(withoutVolumes(quiet(log)), band);
        if (isSalty(bare)) notMilder(bare, judge(quiet(log), band));
      }),
      many,
    );
  });

  it("a runoff EC that is a tenth to a half higher throughout is never less urgent", () => {
    fc.assert(
      fc.property(potLog, anyBand, fc.constantFrom(1.1, 1.25, 1.5), (log, band, factor) => {
        const before = withoutVolumes(salty(quiet(log), band));
        const after = before.map(({ runoffEc, ...row }) => ({ ...row, runoffEc: runoffEc && runoffEc * factor }));
        notMilder(judge(before, band), judge(after, band));
      }),
      many,
    );
  });

  it("a fall is the same share at any strength: 6.6 to 6.2 as 9.9 to 9.3", () => {
    const band = bandFor("bark", "light", "saturated extract");
    const log = [8.4, 8.1, 7.8, 7.5, 7.2, 6.9, 6.6, 6.2].map((runoffEc, day): PotReading => ({
      day: 45_401 + day,
      inputEc: 0.6,
      inputPh: 4.5,
      runoffEc,
      runoffPh: 4.2 + day / 10,
    }));
    notMilder(judge(log, band), judge(log.map((row) => ({ ...row, runoffEc: (row.runoffEc ?? 0) * 1.5 })), band));
  });

  it("a runoff pH that stands further outside throughout is never less urgent", () => {
    fc.assert(
      fc.property(potLog, anyBand, fc.constantFrom(0.1, 0.3, 0.6), fc.boolean(), (log, band, step, isHigh) => {
        const edge = isHigh ? band.ph[1] : band.ph[0];
        const moved = (by: number): PotReading[] => withoutVolumes(quiet(log)).map((row, place) => ({
          ...row,
          runoffEc: (band.ec[0] + band.ec[1]) / 2,
          runoffPh: edge + (isHigh ? 1 : -1) * (by + 0.05 * (place % 3)),
        }));
        notMilder(judge(moved(0.2), band), judge(moved(0.2 + step), band));
      }),
      many,
    );
  });

  it("a plant that wilts is never less urgent than the same pot without a word of it", () => {
    fc.assert(
      fc.property(potLog, anyBand, (log, band) => {
        const silent = quiet(log);
        const wilts = silent.map((row, place) => (place === silent.length - 1 ? { ...row, notes: "wilting" } : row));
        notMilder(judge(silent, band), judge(wilts, band));
      }),
      many,
    );
  });
});
