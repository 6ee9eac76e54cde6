import { spawn } from "node:child_process";
import path from "node:path";
import { describe, expect, it } from "vitest";

const root = path.resolve(import.meta.dirname, "../..");

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command; once it has said a whole line, `said` is called with it and may end the process. */
function command(args: readonly string[], said: (line: string, end: () => void) => void = () => undefined): Promise<Ended> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["tools/run.js", "workbench/workbench.ts", ...args], { cwd: root });
    let [out, err] = ["", ""];
    child.stdout.on("data", (data: Buffer) => {
      out += data.toString();
      if (out.includes("\n")) said(out, () => child.kill("SIGINT"));
    });
    child.stderr.on("data", (data: Buffer) => { err += data.toString(); });
    child.on("close", (code) => { resolve({ code, out, err }); });
  });
}

describe("npm run workbench", () => {
  it("prints its address in one line, answers there, and ends on Ctrl+C", async () => {
    const answers: Promise<number>[] = [];
    const ended = await command(["--no-open", "--port", "3870"], (line, end) => {
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(line)?.[0] ?? "";
      const answer = fetch(address).then(({ status }) => status);
      answers.push(answer);
      void answer.finally(end);
    });
    expect(await Promise.all(answers)).toEqual([200]);
    expect(ended.out).toMatch(/^Runoff Ledger workbench: http:\/\/127\.0\.0\.1:38\d\d\/ {2}\(Ctrl\+C ends it\)\n$/);
    expect(ended.code).toBe(0);
  });

  it("ends when npm, which passes a signal on to its shell only, is told to end", async () => {
    const npm = spawn("npm", ["run", "--silent", "workbench", "--", "--no-open", "--port", "3880"], { cwd: root });
    const line = await new Promise<string>((resolve) => npm.stdout.once("data", (data: Buffer) => { resolve(data.toString()); }));
    const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(line)?.[0] ?? "";
    const answers = (): Promise<boolean> => fetch(address).then(() => true, () => false);
    expect(await answers()).toBe(true);
    npm.kill("SIGTERM");
    await expect.poll(answers).toBe(false);
  });

  it.each(["0", "65536", "many"])("--port %s: one clear line and exit code 2", async (port) => {
    const ended = await command(["--no-open", "--port", port]);
    expect([ended.code, ended.out]).toEqual([2, ""]);
    expect(ended.err).toContain("--port takes a number from 1 to 65535");
  });
});
