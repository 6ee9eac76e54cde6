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
  /** Settles, with nothing, at the end of the process, for one that ended says no more. */
  #gone: Promise<[]> = Promise.resolve([]);

  async fateOf(task: Task): Promise<Fate> {
    const runner = this.#runner ?? (await this.#begin());
    // The runner first finds out which tests hold without any change: that may take its time.
    const begun = once(runner, "message");
    runner.send(task);
    await Promise.race([begun, this.#gone]);
    const tooLate = setTimeout(() => { this.end(); }, patience);
    const said = once(runner, "message") as Promise<[Answer]>;
    const [answer] = await Promise.race([said, this.#gone]);
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
    this.#gone = once(runner, "exit").then(() => []);
    await once(runner, "message");
    return runner;
  }
}
