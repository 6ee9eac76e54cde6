import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import path from "node:path";
import { type Answer, type Task } from "./runner";

export type Fate = "killed" | "survived" | "never ends";

/** Longer than any run of a folder's tests takes on a busy machine. */
const patience = 300_000;

/** Tries mutants one after another, in a process group that is ended whole when a mutant never ends. */
export class Judge {
  #runner: ChildProcess | undefined;

  async fateOf(task: Task): Promise<Fate> {
    const runner = this.#runner ?? (await this.#begin());
    // The runner first finds out which tests hold without any change: that may take its time.
    const begun = once(runner, "message");
    runner.send(task);
    await orGone(runner, begun);
    const tooLate = setTimeout(() => { this.end(); }, patience);
    const [answer] = await orGone(runner, once(runner, "message")) as [Answer | undefined];
    clearTimeout(tooLate);
    if (answer !== undefined) return answer.killed ? "killed" : "survived";
    this.#runner = undefined;
    return "never ends";
  }

  end(): void {
    if (this.#runner?.pid !== undefined) process.kill(-this.#runner.pid, "SIGKILL");
    this.#runner = undefined;
  }

  async #begin(): Promise<ChildProcess> {
    const place = path.join(import.meta.dirname, "runner.ts");
    const runner = fork(place, { stdio: ["ignore", "ignore", "inherit", "ipc"], detached: true });
    this.#runner = runner;
    await once(runner, "message");
    return runner;
  }
}

/** What comes first: the message, or nothing at the end of a process, for one that ended says no more. */
async function orGone(runner: ChildProcess, message: Promise<unknown[]>): Promise<unknown[]> {
  return Promise.race([message, once(runner, "exit").then(() => [])]);
}
