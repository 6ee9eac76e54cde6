import { flushDay, saltBuildup, water } from "../scenario/salt-buildup";
import { tell } from "../scenario/story";
import { type WorkbookSpec } from "../xlsx/spec";
import { benchNames, benchSheet } from "./bench-sheet";
import { flushDaySheet } from "./flush-day-sheet";
import { logSheet } from "./log-sheet";

const told = tell(saltBuildup);
const portions = told.find(({ entry }) => entry.day === flushDay)?.portions ?? [];
const eve = told.filter(({ entry }) => entry.day < flushDay).at(-1);

export const saltBuildupEntries = told.map(({ entry }) => entry);

/** 75 days of one pepper in coir: salt builds up, the pH slides, a flush, and the recovery. */
export const saltBuildupWorkbook: WorkbookSpec = {
  title: "Salt build-up, flush and recovery",
  names: benchNames,
  sheets: [
    logSheet(saltBuildupEntries),
    benchSheet(
      {
        title: "Pepper 2 in coir: salt builds up, then a flush",
        story: "Invented data. The same 2 L every day while the plant drinks more and more: less drains, salt stays.",
        band: "coir, medium",
        containerLitres: 10,
        waterEc: water.ec,
        meter: "both pens compensate to 25 C",
      },
      [
        {
          asked: "Share that drained, the week before the flush",
          formula: "AVERAGE(Log!M40:M46)",
          style: "answerHundredths",
          how: "leaching fraction: what drained over what was poured",
        },
        {
          asked: "Salt ratio at which that share would settle without a plant",
          formula: "RUNOFF.RATIOCEILING(AVERAGE(Log!M40:M46))",
          style: "answerHundredths",
          how: "a high ratio below this line is what so little drain leads to",
        },
      ],
    ),
    ...(eve === undefined ? [] : [flushDaySheet(saltBuildup.vessel, eve.entry, portions)]),
  ],
};
