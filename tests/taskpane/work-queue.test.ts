import { expect, test, vi } from "vitest";
import { type Answer } from "../../taskpane/view/answer-line";
import { WorkQueue } from "../../taskpane/work-queue";
import { SheetProblem } from "../../taskpane/workbook";

function queueOf(): { queue: WorkQueue; said: Answer[] } {
  const said: Answer[] = [];
  const queue = new WorkQueue({ say: (answer) => { said.push(answer); }, redraw: () => undefined, afterTakingBack: () => Promise.resolve() });
  return { queue, said };
}

test("a fault of ours is spoken at its press, and the next action has its turn", async () => {
  const { queue, said } = queueOf();
  queue.carryOut(() => Promise.reject(new TypeError("it is not there")), "mark");
  queue.carryOut(() => Promise.resolve({ words: "Marked.", takeBack: () => Promise.resolve("Taken back.") }), "mark");
  await vi.waitFor(() => { expect(said).toHaveLength(2); });
  expect(said[0]).toMatchObject({ isProblem: true, at: "mark" });
  expect(said[0]?.words).toContain("it is not there");
  expect(said[1]).toMatchObject({ words: "Marked.", isProblem: false });
});

test("a step is forgotten only once it was taken back: a refusal leaves it to be tried again", async () => {
  const { queue, said } = queueOf();
  let isOpen = false;
  const takeBack = (): Promise<string> =>
    isOpen ? Promise.resolve("Taken back.") : Promise.reject(new SheetProblem("protected"));
  queue.carryOut(() => Promise.resolve({ words: "Done.", takeBack }), "add");
  queue.takeBack("add");
  await vi.waitFor(() => { expect(said).toHaveLength(2); });
  expect([said[1]?.isProblem, queue.canTakeBack]).toEqual([true, true]);
  isOpen = true;
  queue.takeBack("add");
  await vi.waitFor(() => { expect(said).toHaveLength(3); });
  expect([said[2]?.words, queue.canTakeBack]).toEqual(["Taken back.", false]);
});
