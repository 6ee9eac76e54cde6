import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { distFolder } from "../../workbench/host/load-bundle";

const docs = path.join(distFolder, "docs");
const pages = readdirSync(docs, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));
const read = (page: string): string => readFileSync(path.join(docs, page), "utf8");

/** Addresses in a built page, whose quotes the build leaves out where it can. */
const addressesIn = (html: string): string[] => [...html.matchAll(/ (?:href|src)="?([^"\s>]+)/g)].map(([, address = ""]) => address);
const anchorsIn = (html: string): string[] => [...html.matchAll(/ id="?([^"\s>]+)/g)].map(([, id = ""]) => id);

function deadAddresses(page: string): string[] {
  return addressesIn(read(page)).filter((address) => {
    const [file = "", anchor] = address.split("#");
    const target = file === "" ? page : path.join(path.dirname(page), file);
    if (!existsSync(path.join(docs, target))) return true;
    return anchor !== undefined && !anchorsIn(read(target)).includes(anchor);
  });
}

describe("the built pages", () => {
  it("are the README, the documents and the decisions", () => {
    expect(pages).toEqual(expect.arrayContaining(["index.html", "functions.html", "sources.html", path.join("decisions", "shapes.html")]));
  });

  it.each(pages)("%s leads nowhere but to built files, and to anchors that are there", (page) => {
    expect(addressesIn(read(page)).length).toBeGreaterThan(0);
    expect(deadAddresses(page)).toEqual([]);
  });

  it("have an anchor for each source and each function", () => {
    expect(anchorsIn(read("sources.html"))).toContain("epa-120.1");
    expect(anchorsIn(read("functions.html"))).toContain("saltratio");
  });
});
