import { type Entry } from "../scenario/diary";
import { type SheetSpec, type WorkbookSpec } from "../xlsx/spec";
import { benchNames, benchSheet, type PotCard, type Question } from "./bench-sheet";
import { logSheet } from "./log-sheet";

/** A workbook about one pot: its log, the bench sheet with limits and answers, and what else belongs to its story. */
export function benchWorkbook(
  card: PotCard,
  { entries, questions, more = [] }: { entries: readonly Entry[]; questions: readonly Question[]; more?: readonly SheetSpec[] },
): WorkbookSpec {
  return { title: card.title, names: benchNames, sheets: [logSheet(entries), benchSheet(card, questions), ...more] };
}
