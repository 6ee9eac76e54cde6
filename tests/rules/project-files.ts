import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";

export const root = path.resolve(import.meta.dirname, "../..");

/** A file of the project: its path from the root with forward slashes, and its text. */
export interface ProjectFile {
  readonly path: string;
  readonly text: string;
}

/** What is fetched, built or kept by tools, and so is nobody's writing. */
const notWritten = new Set(["node_modules", "dist", ".git", ".cache", "coverage"]);

/** The paths of all files under a folder or file of the project, in order of name. */
export function pathsUnder(place: string): string[] {
  const full = path.join(root, place);
  if (!statSync(full).isDirectory()) return [place];
  const names = readdirSync(full).filter((name) => !notWritten.has(name)).sort();
  return names.flatMap((name) => pathsUnder(place === "." ? name : `${place}/${name}`));
}

/** The files under a folder whose names end as given, with their texts. */
export function filesUnder(place: string, ending: RegExp): ProjectFile[] {
  const paths = pathsUnder(place).filter((each) => ending.test(each));
  return paths.map((each) => ({ path: each, text: readFileSync(path.join(root, each), "utf8") }));
}
