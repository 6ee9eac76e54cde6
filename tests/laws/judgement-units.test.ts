import fc from "fast-check";
import { expect, it } from "vitest";
import { type Band, judge, logInTime, type PotJudgement, type PotReading, readLog } from "../../src/index";
import { anyBand, potLog } from "./judgement-logs";
import { times } from "./times";

type Column = readonly [header: string, cell: (row: PotReading) => unknown];

const scaled = (value: number | undefined, by: number): unknown =>
  value === undefined ? "" : Math.round(value * by * 1000) / 1000;

const columnsIn = (ecUnit: string, ecScale: number, volumeUnit: string, volumeScale: number): readonly Column[] => [
  ["Date", ({ day }) => day],
  [`EC in (${ecUnit})`, ({ inputEc }) => scaled(inputEc, ecScale)],
  ["pH in", ({ inputPh }) => inputPh ?? ""],
  [`EC drain (${ecUnit})`, ({ runoffEc }) => scaled(runoffEc, ecScale)],
  ["pH drain", ({ runoffPh }) => runoffPh ?? ""],
  [`In (${volumeUnit})`, ({ inputLitres }) => scaled(inputLitres, volumeScale)],
  [`Drain (${volumeUnit})`, ({ runoffLitres }) => scaled(runoffLitres, volumeScale)],
  ["Notes", ({ notes }) => notes ?? ""],
];

const inMillisiemens = columnsIn("mS/cm", 1, "L", 1);
const otherUnits = [
  columnsIn("uS/cm", 1000, "mL", 1000), columnsIn("dS/m", 1, "ml", 1000), columnsIn("mS/m", 100, "L", 1),
];
const readAtAll = potLog.filter((log) => log.some(({ runoffEc }) => runoffEc !== undefined));

function judged(log: readonly PotReading[], columns: readonly Column[], band: Band): PotJudgement {
  const cells = [columns.map(([header]) => header), ...log.map((row) => columns.map(([, cell]) => cell(row)))];
  const { rows, questions } = readLog({ cells });
  expect(questions).toEqual([]);
  return judge(logInTime(rows).rows, band);
}

it("judgement: the same pot logged in uS/cm, dS/m or mS/m and in mL hears the same, over 1,500 random logs", () => {
  fc.assert(
    fc.property(readAtAll, anyBand, (log, band) => {
      const { verdict, urgency, causes, course, reasons } = judged(log, inMillisiemens, band);
      const steps = course.map(({ act, says }) => ({ act, says }));
      for (const columns of otherUnits) {
        expect(judged(log, columns, band)).toMatchObject({ verdict, urgency, causes, reasons, course: steps });
      }
    }),
    times(500),
  );
});
