import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { addInOf } from "../../sample-workbooks/add-in";
import { sampleFiles } from "../../sample-workbooks/index";
import { committed, committedWorkbooks, samplesFolder } from "./committed";
import { elements, partsOf } from "./parts";

const manifest = path.resolve(samplesFolder, "../manifest.xml");

describe("opening the pane with a workbook", () => {
  it.each(committedWorkbooks)("is not asked for by %s", (name) => {
    expect(Object.keys(partsOf(committed(name))).filter((part) => part.includes("webextension"))).toEqual([]);
  });

  it("names this add-in's id and version where the script is asked for it", async () => {
    const text = readFileSync(manifest, "utf8");
    const files = await sampleFiles({ opens: addInOf(manifest) });
    const parts = partsOf(files.get("salt-buildup.xlsx") ?? new Uint8Array());
    const reference = elements(parts, "xl/webextensions/webextension1.xml", "we:reference")[0];
    expect(text).toContain(`<Id>${reference?.getAttribute("id") ?? "none"}</Id>`);
    expect(text).toContain(`<Version>${reference?.getAttribute("version") ?? "none"}</Version>`);
    expect(parts["_rels/.rels"]).toContain('Target="xl/webextensions/taskpanes.xml"');
  });
});
