import { type CropFigures, cropFigures } from "../tests/cases/crop-figures";
import { openCrops } from "../tests/cases/open-crops";

// npm run crops: what would have been said, day by day, of professionally run crops
const { about, source, crops } = openCrops();

const share = (days: number, of: number): string => `${days} of ${of} days (${Math.round((100 * days) / of)} %)`;

function linesOf(figures: CropFigures): string[] {
  const { name, days, verdicts, buildupDays } = figures;
  return [
    `${name}: ${days} days`,
    ...[...verdicts].map(([word, times]) => `  ${word}: ${times}`),
    `  told to flush: ${share(figures.toldToFlush, days)}`,
    `  called salty: ${share(figures.flaggedForSalt, days)}`,
    `  pH called out of range: ${share(figures.flaggedForPh, days)}`,
    ...(buildupDays === 0 ? [] : [`  the build-up is named on ${figures.buildupNamed} of ${buildupDays} days`]),
  ];
}

const lines = crops.flatMap((crop) => [...linesOf(cropFigures(crop)), `  (${crop.band}; ${crop.note})`]);
process.stdout.write(`${[about, source, "", ...lines].join("\n")}\n`);
