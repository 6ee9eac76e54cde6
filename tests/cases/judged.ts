import { type Band, bandNamed, ec25, ownBand, ph, type PotReport, reportOf } from "../../src/index";
import { type PotCase } from "./case-book";
import { caseGrid } from "./case-log";

/** The band of a case: named as in a cell, or the grower's own limits. */
export function bandOf({ band, limits }: PotCase): Band {
  if (limits === undefined) return bandNamed(band ?? "");
  const [phLow, phHigh, ecLow, ecHigh] = limits;
  return ownBand(ph(phLow), ph(phHigh), ec25(ecLow), ec25(ecHigh));
}

/** The pots of a case, worst first, by the path that pane and command line take. */
export const judgedPots = (pot: PotCase): readonly PotReport[] =>
  reportOf({ grid: caseGrid(pot).grid, band: bandOf(pot) }).pots;
