import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";

const root = path.resolve(import.meta.dirname, "../..");

/** What the host does that a kinder stand-in does not, and the title of the test that holds the pane to it. */
const faults: readonly (readonly [fault: string, file: string, title: string])[] = [
  ["a picture can be added to a sheet as PNG only", "tests/workbench/host/workbook.test.ts", "text that is no picture is InvalidArgument"],
  ["a member may be in a preview, and not in the released library", "tests/workbench/host/released-members.test.ts", "every member of the host that the pane names"],
  ["a spill's answers may be blank: only the host knows how far it reaches", "tests/taskpane/sheet/functions-alive.test.ts", "turns a column and a table that spills into their values"],
  ["not every change can join one step of undo", "tests/taskpane/sheet/host-faults.test.ts", "a change that cannot join one step of the undo list"],
  ["formulas answer late and show #BUSY! meanwhile", "tests/taskpane/sheet/host-faults.test.ts", "formulas that answer late are told of when they have answered"],
  ["formulas of a new sheet answer and spill after it was made", "tests/taskpane/sheet/new-sheet.test.ts", "beside a sheet of that name it takes the next free one; take back deletes it again"],
  ["a taking back may fail", "tests/taskpane/work-queue.test.ts", "a step is forgotten only once it was taken back"],
  ["a new conditional format stands above the older ones", "tests/workbench/host/workbook.test.ts", "a new conditional format comes before those that are there"],
  ["a batch that fails stands in part", "tests/taskpane/sheet/forced-failures.test.ts", "whatever sync fails, the workbook is as before, or done, or it is said what stands"],
  ["a person goes on working between two syncs", "tests/taskpane/sheet/person-edits.test.ts", "whatever a person does between two syncs, what they typed stays"],
  ["where the first column is hidden, its visible view is empty", "tests/taskpane/sheet/host-faults.test.ts", "a hidden first column is read with the others"],
  ["the pane's script runs on while the pane is closed", "tests/taskpane/sheet/host-faults.test.ts", "a pane that is closed and shown again is told of both"],
  ["ids of sheets change, so answers are kept with sheet and headers", "tests/browser/pane/answers.test.ts", "answers are kept in the workbook, for this sheet and these headers"],
  ["kept answers may be another version's", "tests/taskpane/kept-choices.test.ts", "answers that another version kept"],
  ["events may be refused while a cell is edited", "tests/taskpane/sheet/host-faults.test.ts", "events can be asked for again after the host refused them once"],
  ["custom functions are not there on every host", "tests/browser/pane/failures.test.ts", "no worksheet functions in this host"],
  ["the web fetches functions.json from its own origin", "tests/tools/check-host.test.ts", "no cross-origin header on functions.json"],
  ["positions and spills came later than what the manifest asks for", "tests/compatibility/compatibility.test.ts", "nothing fails without words on any"],
  ["taking columns back has to leave a person's formats and widths", "tests/taskpane/sheet/forced-failures.ts", "A log whose person gave a column on its right a width, a format and a bold head"],
  ["a fault of ours must not leave the pane waiting", "tests/taskpane/work-queue.test.ts", "a fault of ours is spoken at its press"],
  ["a merged title is many cells to the host", "tests/taskpane/sheet/host-faults.test.ts", "a merged title, which the host hands over as many selected cells"],
  ["decimal-comma hosts take ; between arguments", "tests/docs/argument-separator.test.ts", "say what stands between arguments where the decimal sign is a comma"],
];

test.each(faults)("%s: a test holds it", (_, file, title) => {
  expect(readFileSync(path.join(root, file), "utf8")).toContain(title);
});
