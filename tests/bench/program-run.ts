import { spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";

export interface ProgramRun {
  readonly milliseconds: number;
  /** The most that any one process of it held in memory; NaN where the system does not say. */
  readonly megabytes: number;
}

const everyMilliseconds = 25;

/** Runs a program to its end, and watches from outside how much memory it and what it starts come to hold. */
export function programRun(program: string, args: readonly string[]): Promise<ProgramRun> {
  return new Promise((resolve, reject) => {
    const start = performance.now();
    const child = spawn(program, args, { detached: true, stdio: ["ignore", "ignore", "pipe"] });
    let [megabytes, said] = [NaN, ""];
    child.stderr.on("data", (data: Buffer) => { said += data.toString(); });
    const watch = setInterval(() => {
      const held = highWater(child.pid ?? 0);
      if (held > 0) megabytes = Math.max(held, Number.isNaN(megabytes) ? 0 : megabytes);
    }, everyMilliseconds);
    child.once("error", reject);
    child.once("close", (code) => {
      clearInterval(watch);
      if (code === 0) resolve({ milliseconds: performance.now() - start, megabytes });
      else reject(new Error(`${program} ended with ${code}: ${said}`));
    });
  });
}

/** What Linux keeps of each process of a group: the most it held so far. */
function highWater(group: number): number {
  return Math.max(0, ...processes().map((id) => {
    try {
      // After the name in brackets: state, parent, group.
      const [, , inGroup] = readFileSync(`/proc/${id}/stat`, "utf8").split(") ").at(-1)?.split(" ") ?? [];
      const [, kilobytes] = /VmHWM:\s+(\d+) kB/u.exec(Number(inGroup) === group ? readFileSync(`/proc/${id}/status`, "utf8") : "") ?? [];
      return Number(kilobytes ?? 0) / 1000;
    } catch {
      return 0;
    }
  }));
}

function processes(): string[] {
  try {
    return readdirSync("/proc").filter((name) => /^\d+$/u.test(name));
  } catch {
    return [];
  }
}
