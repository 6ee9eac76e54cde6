import { describe, expect, it } from "vitest";
import { filesUnder, type ProjectFile } from "../rules/project-files";
import { citedKeys, definedSources } from "./source-keys";

const page = "docs/sources.md";
const documents = filesUnder("docs", /\.md$/);
const citing: ProjectFile[] = [
  ...["src", "functions"].flatMap((folder) => filesUnder(folder, /\.ts$/)),
  ...filesUnder("tests/check-values", /\.json$/),
  ...documents.filter(({ path }) => path !== page),
];
const defined = definedSources(documents.find(({ path }) => path === page)?.text ?? "");

describe("docs/sources.md", () => {
  it("defines every key that is cited, once, and no other", () => {
    expect(citedKeys(citing).length).toBeGreaterThan(10);
    expect(defined.map(([key]) => key).sort()).toEqual(citedKeys(citing));
  });

  it.each(defined)("says how far we have read %s", (_, says) => {
    expect(says).toMatch(/standing: (read|secondary copy|memory)\b/);
  });
});

describe("the look for keys", () => {
  it("sees comments and texts, and neither code nor links", () => {
    const code = '/** [epa-120.1] */ const a = b[c-1]; // [pratt2001]\nconst d = "[not-cited-1]";';
    const text = "[handbook-60](sources.md), [[rhoades-1974]](sources.md#rhoades-1974) and [ku-hershey-1991]";
    expect(citedKeys([{ path: "a.ts", text: code }])).toEqual(["epa-120.1", "pratt2001"]);
    expect(citedKeys([{ path: "a.md", text }])).toEqual(["ku-hershey-1991", "rhoades-1974"]);
    expect(definedSources("- [a-1] x; standing: read\n")).toEqual([["a-1", "x; standing: read"]]);
  });
});
