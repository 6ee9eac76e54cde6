import { existsSync } from "node:fs";
import { link, open, readdir, rename, rm } from "node:fs/promises";
import path from "node:path";
import { isRunning } from "../running";
import { FileProblem } from "./file-problem";

/**
 * Writes a new file so that it is absent or whole whenever the machine stops: beside it first, then under its own name.
 * A file that is already there is never replaced. What a killed run leaves beside it is swept by the next one that writes it.
 */
export async function writeWhole(file: string, bytes: Uint8Array): Promise<void> {
  if (existsSync(file)) throw taken(file);
  await sweep(file);
  const beside = path.join(path.dirname(file), `.${path.basename(file)}.${process.pid}.part`);
  try {
    const handle = await open(beside, "wx");
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await giveName(beside, file);
  } finally {
    await rm(beside, { force: true });
  }
}

/** Takes away what a run that was killed while it wrote this very file has left beside it. */
async function sweep(file: string): Promise<void> {
  const [start, end] = [`.${path.basename(file)}.`, ".part"];
  for (const name of await readdir(path.dirname(file)).catch(() => [])) {
    const writer = Number(name.startsWith(start) && name.endsWith(end) ? name.slice(start.length, -end.length) : NaN);
    if (Number.isInteger(writer) && !isRunning(writer)) await rm(path.join(path.dirname(file), name), { force: true });
  }
}

const taken = (file: string): FileProblem => new FileProblem(`${file} is already there and is not replaced: choose another name`);

/** A link, unlike a renaming, fails when the name is taken meanwhile; not every disk has links. */
async function giveName(beside: string, file: string): Promise<void> {
  try {
    await link(beside, file);
  } catch (problem) {
    const code = (problem as NodeJS.ErrnoException).code ?? "";
    if (code === "EEXIST") throw taken(file);
    if (!["EPERM", "ENOTSUP", "ENOSYS", "EOPNOTSUPP", "EMLINK"].includes(code)) throw problem;
    await rename(beside, file);
  }
}
