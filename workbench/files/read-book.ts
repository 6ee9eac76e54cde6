import { readFile, stat } from "node:fs/promises";
import path from "node:path";
import { type Book } from "../book";
import { FileProblem } from "./file-problem";
import { limits } from "./open-package";
import { readCsv } from "./read-csv";

const textTables = new Set([".csv", ".tsv", ".txt"]);

/** Reads a workbook or a text table by the ending of its name; what cannot be used is refused in one line that names the file. */
export async function readBook(file: string): Promise<Book> {
  const name = path.basename(file);
  try {
    const bytes = await readBytes(file);
    const ending = path.extname(file).toLowerCase();
    if (textTables.has(ending)) return readCsv(bytes, path.basename(file, ending));
    const { readXlsx } = await import("./read-xlsx");
    return await readXlsx(bytes);
  } catch (problem) {
    throw problem instanceof FileProblem ? new FileProblem(`${name}: ${problem.message}`) : problem;
  }
}

/** The bytes of a file that is there, is a file, and is not larger than can be handled. */
export async function readBytes(file: string): Promise<Uint8Array> {
  const found = await stat(file).catch(() => undefined);
  if (found === undefined) throw new FileProblem("there is no such file");
  if (!found.isFile()) throw new FileProblem("it is not a file");
  if (found.size > limits.packedBytes) throw new FileProblem(limits.tooLarge);
  return readFile(file);
}
