import { readFile, stat } from "node:fs/promises";
import path from "node:path";
import { type Book } from "../book";
import { about, FileProblem } from "./file-problem";
import { limits } from "./open-package";
import { readCsv } from "./read-csv";

const textTables = /\.(csv|tsv|txt)$/iu;

/** Reads a workbook or a text table by the ending of its name; what cannot be used is refused in one line that names the file. */
export function readBook(file: string): Promise<Book> {
  const name = path.basename(file);
  return about(name, async () => {
    const bytes = await readBytes(file);
    if (textTables.test(name)) return readCsv(bytes, name.replace(textTables, ""));
    const { readXlsx } = await import("./read-xlsx");
    return readXlsx(bytes);
  });
}

/** The bytes of a file that is there, is a file, and is not larger than can be handled. */
export async function readBytes(file: string): Promise<Uint8Array> {
  const found = await stat(file).catch(() => undefined);
  if (found === undefined) throw new FileProblem("there is no such file");
  if (!found.isFile()) throw new FileProblem("it is not a file");
  if (found.size > limits.packedBytes) throw new FileProblem(limits.tooLarge);
  return readFile(file);
}
