import { messySheets } from "./messy-sheet";
import { type ColumnOutcome, type Outcome, type RowOutcome } from "./outcome";
import { plainOutcome } from "./plain-outcome";
import { plainSheetNames } from "./plain-sheet";
import { outcomeOf } from "./tally";

/** Prints what came of every column and row of all log sheets, and what is wrong with a sheet that does not hold. */
const columns: readonly ColumnOutcome[] = ["right", "asked", "wrong told", "wrong in silence"];
const rows: readonly RowOutcome[] = ["right", "told", "set aside with reason", "wrong in silence", "lost"];

function counts<Kind extends string>(kinds: readonly Kind[], all: readonly Kind[]): string {
  return kinds.map((kind) => `${kind} ${all.filter((one) => one === kind).length}`).join(", ");
}

function print(title: string, outcomes: readonly Outcome[]): void {
  const ofColumns = outcomes.flatMap((outcome) => outcome.columns);
  let ofRows: RowOutcome[] = [];
  for (const outcome of outcomes) ofRows = ofRows.concat(outcome.rows);
  console.log(`${title}: ${outcomes.length} sheets`);
  console.log(`  columns (${ofColumns.length}): ${counts(columns, ofColumns)}`);
  console.log(`  rows (${ofRows.length}): ${counts(rows, ofRows)}`);
}

const messy = messySheets().map((sheet) => ({ name: sheet.name, outcome: outcomeOf(sheet) }));
const plain = plainSheetNames.map(plainOutcome);
print("All log sheets", [...plain, ...messy.map(({ outcome }) => outcome)]);
print("of these, written reading", plain);
print("of these, messy", messy.map(({ outcome }) => outcome));
const failing = messy.filter(({ outcome }) => outcome.faults.length > 0);
for (const { name, outcome } of failing) console.log(`\n${name}\n  ${outcome.faults.slice(0, 4).join("\n  ")}`);
