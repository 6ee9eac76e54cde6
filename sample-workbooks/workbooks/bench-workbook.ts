import { type Entry } from "../scenario/diary";
import { type SheetSpec, type WorkbookSpec } from "../xlsx/spec";
import { address, placeOf } from "../xlsx/address";
import { benchNames, benchSheet, type PotCard, type Question } from "./bench-sheet";
import { logChart } from "./log-chart";
import { keptAnswers } from "./kept-answers";
import { logSheet } from "./log-sheet";

interface Told {
  readonly entries: readonly Entry[];
  readonly questions: readonly Question[];
  /** What the chart shows. */
  readonly drawn: "EC" | "pH";
  readonly more?: readonly SheetSpec[];
  /** Whether the pane finds the medium answered when the workbook opens. */
  readonly isMediumKept?: boolean;
}

const chartRows = 19;

/** A workbook about one pot: its log, the bench sheet with limits and answers, and what else belongs to its story. */
export function benchWorkbook(
  card: PotCard,
  { entries, questions, drawn, more = [], isMediumKept = false }: Told,
): WorkbookSpec {
  const bench = benchSheet(card, questions);
  const top = Math.max(...[...bench.cells.keys()].map((at) => placeOf(at).row)) + 2;
  const place = `${address({ row: top, column: 0 })}:${address({ row: top + chartRows, column: 2 })}`;
  const charted = { ...bench, charts: [logChart(drawn, entries.length + 1, place)] };
  const log = isMediumKept ? { ...logSheet(entries), kept: keptAnswers(card) } : logSheet(entries);
  return { title: card.title, names: benchNames, sheets: [log, charted, ...more] };
}
