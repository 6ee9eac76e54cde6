import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, expect, test } from "vitest";
import { FileProblem } from "../../../workbench/files/file-problem";
import { writeWhole } from "../../../workbench/files/write-whole";

const folder = mkdtempSync(path.join(tmpdir(), "write-whole-"));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

test("a new file holds every byte, and nothing is left beside it", async () => {
  const file = path.join(folder, "new.xlsx");
  await writeWhole(file, Uint8Array.from([1, 2, 3]));
  expect([...readFileSync(file)]).toEqual([1, 2, 3]);
  expect(readdirSync(folder)).toEqual(["new.xlsx"]);
});

test("a file that is there, or a link to one, is not replaced", async () => {
  const file = path.join(folder, "there.xlsx");
  const link = path.join(folder, "link.xlsx");
  writeFileSync(file, "kept");
  symlinkSync(file, link);
  for (const taken of [file, link]) await expect(writeWhole(taken, Uint8Array.from([1]))).rejects.toThrow(FileProblem);
  expect(readFileSync(file, "utf8")).toBe("kept");
});

function stateOf(file: string, size: number): string {
  if (!existsSync(file)) return "absent";
  return readFileSync(file).equals(Buffer.alloc(size, 7)) ? "whole" : "torn";
}

test("killed while it writes 24 MB, at seven moments, the file is absent or whole; left alone, it is whole", async () => {
  const megabytes = 24;
  const size = megabytes * 1024 * 1024;
  const script = `
    const { writeWhole } = await import(${JSON.stringify(path.resolve("workbench/files/write-whole.ts"))});
    const bytes = new Uint8Array(${size}).fill(7);
    process.stdout.write("ready\\n");
    await writeWhole(process.argv[1], bytes);
    process.stdout.write("done\\n");`;
  const seen = new Set<string>();
  for (const milliseconds of [0, 4, 8, 16, 32, 64, 128, undefined]) {
    const file = path.join(folder, `killed-${milliseconds}.xlsx`);
    const child = spawn(process.execPath, ["--import", "tsx", "--input-type=module", "-e", script, file], { stdio: ["ignore", "pipe", "ignore"] });
    const ended = new Promise((resolve) => child.once("close", resolve));
    await new Promise((resolve) => child.stdout.once("data", resolve));
    if (milliseconds !== undefined) {
      await wait(milliseconds);
      child.kill("SIGKILL");
    }
    await ended;
    seen.add(stateOf(file, size));
    for (const left of readdirSync(folder)) if (left.includes("killed")) rmSync(path.join(folder, left));
  }
  expect([...seen].sort()).toEqual(["absent", "whole"]);
});

test("what a killed run left beside the file is swept by the next one that writes it; another file's, or a running one's, stays", async () => {
  const file = path.join(folder, "swept.xlsx");
  const gone = spawn(process.execPath, ["-e", ""]);
  await new Promise((resolve) => gone.once("close", resolve));
  const [dead, running, other] = [`.swept.xlsx.${gone.pid ?? 0}.part`, `.swept.xlsx.${process.ppid}.part`, `.other.xlsx.${gone.pid ?? 0}.part`];
  for (const name of [dead, running, other]) writeFileSync(path.join(folder, name), "half");
  await writeWhole(file, Uint8Array.from([7]));
  expect(readdirSync(folder).filter((name) => name.endsWith(".part")).sort()).toEqual([other, running].sort());
});
