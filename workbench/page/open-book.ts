import type { Book } from "../book";
import { readCsv } from "../files/read-csv";
import { readXlsx } from "../files/read-xlsx";

/** A workbook or a .csv as a book, by the ending of its name. */
export async function bookFrom(name: string, bytes: Uint8Array): Promise<Book> {
  return name.toLowerCase().endsWith(".csv") ? readCsv(bytes, name) : await readXlsx(bytes);
}

/** The names of the sample workbooks, in the order of the folder. */
export async function sampleNames(): Promise<string[]> {
  const answer = await fetch("samples.json");
  return (await answer.json()) as string[];
}

export async function sampleBook(name: string): Promise<Book> {
  const answer = await fetch(`samples/${encodeURIComponent(name)}`);
  if (!answer.ok) throw new Error(`There is no sample called ${name}.`);
  return await bookFrom(name, new Uint8Array(await answer.arrayBuffer()));
}
