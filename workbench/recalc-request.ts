import { existsSync } from "node:fs";
import { realpath } from "node:fs/promises";
import path from "node:path";
import { parseArgs } from "node:util";
import { blankDeliveries, type BlankDelivery } from "./host/functions-host";
import { orElse } from "./files/file-problem";

export interface RecalcRequest {
  readonly file: string;
  readonly out: string | undefined;
  readonly blank: BlankDelivery;
  readonly json: boolean;
}

/** Arguments that ask for nothing that can be done, in one line. */
export class UsageProblem extends Error {
  override readonly name = "UsageProblem";
  constructor(message: string) {
    super(`${message}; usage: npm run recalc -- FILE.xlsx [--out OUT.xlsx] [--json] [--blank zero|null|empty]`);
  }
}

const options = { out: { type: "string" }, json: { type: "boolean" }, blank: { type: "string" } } as const;

/** Reads the command line; paths count from the folder the person stands in. */
export async function recalcRequest(args: string[], folder: string): Promise<RecalcRequest> {
  const { values, positionals } = orElse(UsageProblem, () => parseArgs({ args, options, allowPositionals: true }));
  const [given] = positionals;
  if (given === undefined || positionals.length > 1) throw new UsageProblem(`one file is wanted, ${positionals.length} are given`);
  const file = path.resolve(folder, given);
  const out = values.out === undefined ? undefined : path.resolve(folder, values.out);
  if (out !== undefined) await checkOut(out, file);
  return { file, out, blank: blankDelivery(values.blank ?? "zero"), json: values.json ?? false };
}

function blankDelivery(word: string): BlankDelivery {
  const ways = Object.keys(blankDeliveries) as BlankDelivery[];
  const way = ways.find((each) => each === word);
  if (way === undefined) throw new UsageProblem(`--blank is one of ${ways.join(", ")}, not ${word}`);
  return way;
}

async function checkOut(out: string, file: string): Promise<void> {
  if ((await truePath(out)) === (await truePath(file))) throw new UsageProblem("--out is the file itself, which is never written to");
  if (existsSync(out)) throw new UsageProblem(`--out ${path.basename(out)} is already there and is not replaced`);
  if (!existsSync(path.dirname(out))) throw new UsageProblem(`--out is in ${path.dirname(out)}, which is not there`);
  if (path.extname(out).toLowerCase() !== path.extname(file).toLowerCase()) throw new UsageProblem(`--out must end in ${path.extname(file)}`);
}

/** Where a path leads once its links are followed, be the file itself there or not. */
async function truePath(file: string): Promise<string> {
  return realpath(file).catch(async () => path.join(await realpath(path.dirname(file)).catch(() => path.dirname(file)), path.basename(file)));
}
