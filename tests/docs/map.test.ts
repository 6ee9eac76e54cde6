import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../rules/project-files";

const guide = readFileSync(path.join(root, "DEVELOPERS.md"), "utf8");

/** The text under a heading, up to the next heading of its rank. */
const under = (heading: string): string => guide.split(/^## /m).find((part) => part.startsWith(`${heading}\n`)) ?? "";

/** What stands in backticks at the head of each line of a list. */
const listed = (text: string, head: RegExp): string[] => [...text.matchAll(head)].map(([, name]) => name ?? "").sort();

/** Fetched, built, or one person's: hidden folders but for .ci are the tools' own. */
const isWritten = (name: string): boolean => name === ".ci" || !/^(\.|node_modules$|dist$|coverage$)/.test(name);

function foldersIn(place: string): string[] {
  const entries = readdirSync(path.join(root, place), { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory() && isWritten(entry.name)).map(({ name }) => name);
}

describe("the map in DEVELOPERS.md", () => {
  it("has every folder of the top level and of src, and no other", () => {
    const there = [...foldersIn("."), ...foldersIn("src").map((name) => `src/${name}`)];
    expect(there.length).toBeGreaterThan(15);
    expect(listed(under("Map"), /^ *- `([^`]+)\/`/gm)).toEqual(there.sort());
  });
});

describe("the house in DEVELOPERS.md", () => {
  it("leads a cell and a press through files that exist, in five steps each", () => {
    const steps = [...under("The house").matchAll(/^\d\. .*$/gm)].map(([line]) => line);
    const named = steps.flatMap((line) => listed(line, /`((?:functions|src|taskpane)\/[^`]+)`/g));
    expect(steps).toHaveLength(10);
    expect(named.length).toBeGreaterThanOrEqual(steps.length);
    expect(named.filter((file) => !existsSync(path.join(root, file)))).toEqual([]);
  });
});

describe("package.json in DEVELOPERS.md", () => {
  const wanted = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")) as Record<string, Record<string, string>>;

  it("has every dependency explained, and no other", () => {
    const heads = [...under("Dependencies").matchAll(/^- ([^:]+):/gm)].map(([, head]) => head ?? "");
    const explained = heads.flatMap((head) => listed(head, /`([^`]+)`/g)).sort();
    expect(explained).toEqual(Object.keys({ ...wanted["dependencies"], ...wanted["devDependencies"] }).sort());
  });

  it("has every script explained, and no other", () => {
    const explained = listed(under("Commands"), /`npm (?:run )?(test|start|stop|(?<=run )[\w-]+)`/g);
    expect([...new Set(explained)]).toEqual(Object.keys(wanted["scripts"] ?? {}).sort());
  });
});
