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
    const answer = once(runner, "message") as Promise<[Answer]>;
    runner.send(task);
    const late = AbortSignal.timeout(patience);
    const tooLate = once(late, "abort").then(() => undefined);
    const came = await Promise.race([answer, tooLate]);
    if (came !== undefined) return came[0].killed ? "killed" : "survived";
    this.end();
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
