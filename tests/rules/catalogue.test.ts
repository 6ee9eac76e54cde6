import { describe, expect, it } from "vitest";
import { loadBundle } from "../../workbench/host/load-bundle";
import { checkFiles } from "../check-values/check-file";
import { soundCalls } from "../functions/sound-calls";
import { notPlain, plainFormulas } from "../independent/plain-formulas";
import { catalogue } from "./catalogue";
import { filesUnder } from "./project-files";

const { host, metadata } = loadBundle();
const ids = Object.keys(catalogue).sort();
const page = filesUnder("docs", /functions\.md$/)[0]?.text ?? "";

describe("the catalogue of worksheet functions", () => {
  it("is what functions.json offers, argument by argument", () => {
    const offered = metadata.functions.map(({ id, parameters }) => {
      const names = parameters.map(({ name, optional }) => (optional === true ? `[${name}]` : name));
      return [id, names.join(", ")] as const;
    });
    expect(Object.fromEntries(offered)).toEqual(catalogue);
  });

  it("is what functions.js associates", () => {
    expect(host.ids.sort()).toEqual(ids);
  });

  it("is what docs/functions.md describes, each function once and with these arguments", () => {
    const headings = [...page.matchAll(/^### (.+)$/gm)].map(([, id = ""]) => id);
    expect(headings.sort()).toEqual(ids);
    for (const [id, names] of Object.entries(catalogue)) expect(page).toContain(`\`=RUNOFF.${id}(${names})\``);
  });
});

describe("every function is called through the built bundle", () => {
  it("with faults in each argument, by tests/functions/refusals.test.ts", () => {
    expect(Object.keys(soundCalls).sort()).toEqual(ids);
  });

  it("against values from outside, by tests/check-values/ or by a plain formula, or by a test of its own", () => {
    const checked = new Set([...checkFiles().map((file) => file.function), ...plainFormulas.map(({ id }) => id)]);
    const named = filesUnder("tests/functions", /\.test\.ts$/).map(({ text }) => text).join("\n");
    const unchecked = ids.filter((id) => !checked.has(id));
    expect(unchecked.filter((id) => !new RegExp(`call\\("${id}"`).test(named))).toEqual([]);
  });

  it("and what no plain formula can say is named with its reason", () => {
    expect([...new Set(plainFormulas.map(({ id }) => id)), ...Object.keys(notPlain)].sort()).toEqual(ids);
  });
});
