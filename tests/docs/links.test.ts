import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { filesUnder, type ProjectFile, root } from "../rules/project-files";

const documents = ["README.md", "DEVELOPERS.md", "docs", "sample-workbooks"].flatMap((place) => filesUnder(place, /\.md$/));

/** Anchors as code hosts and our own pages make them: from headings, and from the keys of sources. */
function anchorsOf(markdown: string): string[] {
  const headings = [...markdown.matchAll(/^#+ (.+)$/gm)].map(([, text = ""]) => text.toLowerCase());
  const keys = [...markdown.matchAll(/^- \[([\w.-]+)\] /gm)].map(([, key = ""]) => key);
  return [...headings.map((text) => text.replaceAll(/[^a-z0-9 _-]/g, "").replaceAll(" ", "-")), ...keys];
}

/** The links of a document that lead to no file of the project, or to no anchor in it. */
function deadLinks({ path: from, text }: ProjectFile): string[] {
  const targets = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target = ""]) => target);
  return targets.filter((target) => {
    if (/^[a-z]+:/i.test(target)) return false;
    const [file = "", anchor] = target.split("#");
    const place = path.join(root, file === "" ? from : path.join(path.dirname(from), file));
    if (!existsSync(place)) return true;
    return anchor !== undefined && !anchorsOf(readFileSync(place, "utf8")).includes(anchor);
  });
}

describe("links between the documents", () => {
  it.each(documents.map((each) => [each.path, each] as const))("%s has no dead one", (_, document) => {
    expect(deadLinks(document)).toEqual([]);
  });

  it("would be found dead", () => {
    const text = "[a](no-such.md) [b](docs/functions.md#nosuch) [c](docs/functions.md#saltratio) [d](https://example.org/x)";
    expect(deadLinks({ path: "README.md", text })).toEqual(["no-such.md", "docs/functions.md#nosuch"]);
  });
});
