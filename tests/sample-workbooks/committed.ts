import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** Where the sample files lie. */
export const samplesFolder = path.resolve(import.meta.dirname, "../../sample-workbooks");

const named = (ending: string): string[] => readdirSync(samplesFolder).filter((name) => name.endsWith(ending) && !name.startsWith("~$")).sort();

export const committedWorkbooks = named(".xlsx");
export const committedFiles = [...committedWorkbooks, ...named(".csv")];

export const committed = (name: string): Uint8Array => new Uint8Array(readFileSync(path.join(samplesFolder, name)));
