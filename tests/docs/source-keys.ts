import { type ProjectFile } from "../rules/project-files";

/** `[ku-hershey-1991]`: small letters with a hyphen, a dot or a digit in it; not the text of a link. */
const key = /\[([a-z][a-z0-9.-]*[0-9.-][a-z0-9.-]*)\](?!\()/g;
const comment = /\/\*[\s\S]*?\*\/|\/\/.*$/gm;
const definition = /^- \[([^\]]+)\] (.+)$/gm;

const withoutRepeats = (keys: readonly string[]): string[] => [...new Set(keys)].sort();

/** The source keys that files cite: in code only the comments are looked at, elsewhere all of the text. */
export function citedKeys(files: readonly ProjectFile[]): string[] {
  const prose = files.flatMap(({ path, text }) => (path.endsWith(".ts") ? (text.match(comment) ?? []) : [text]));
  return withoutRepeats(prose.flatMap((text) => [...text.matchAll(key)].map(([, found]) => found ?? "")));
}

/** The lines that docs/sources.md has for them: key and what it says. */
export const definedSources = (page: string): [key: string, says: string][] =>
  [...page.matchAll(definition)].map(([, found, says]) => [found ?? "", says ?? ""]);
