import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { loadBundle } from "../workbench/host/load-bundle";
import { all, manifestProblems, parsed } from "./manifest/problems";

const root = path.resolve(import.meta.dirname, "..");
const text = (file: string): string => readFileSync(path.join(root, file), "utf8");
const manifest = text("manifest.xml");

describe("manifest.xml", () => {
  it("has nothing that a host would refuse", () => {
    expect(manifestProblems(manifest)).toEqual([]);
  });

  it.each([
    ["an Id that is no GUID", "6f9913a2-00c6-4943-8f8d-d156176cfddf", "6f9913a2", "Id 6f9913a2 is not a GUID"],
    ["plain http", "https://localhost:3000/functions.js?v", "http://localhost:3000/functions.js?v", "is not https"],
    ["a resid nobody defined", '<Label resid="Button" />', '<Label resid="Knob" />', "resid Knob is used but not defined"],
    ["a resid nobody uses", '<Description resid="About" />', '<Description resid="Name" />', "resid About is defined but not used"],
    ["a second page", '<FunctionFile resid="Pane.Url" />', '<FunctionFile resid="Help.Url" />', "use different pages"],
    ["a short lifetime", 'lifetime="long"', 'lifetime="short"', "one runtime, with a long lifetime"],
    ["a missing part", /<SupportUrl .*/, "", "SupportUrl is missing"],
    ["parts out of order", "<Hosts>\n    <Host Name", "<Hosts/><SupportUrl/><Hosts>\n    <Host Name", "out of order"],
    ["more rights", "ReadWriteDocument<", "ReadWriteMailbox<", "permissions: ReadWriteMailbox"],
    ["EquivalentAddins", "<Runtimes>", "<EquivalentAddins/><Runtimes>", "EquivalentAddins is used"],
    ["a button text of 126 letters", 'DefaultValue="Root zone"', `DefaultValue="${"r".repeat(126)}"`, "Button is too long"],
    ["a version of three numbers", "0.1.0.0", "0.1.0", "Version 0.1.0 is not four numbers"],
  ])("the check finds %s", (_, from, to, problem) => {
    expect(manifest.replace(from, to)).not.toBe(manifest);
    expect(manifestProblems(manifest.replace(from, to)).join("\n")).toContain(problem);
  });

  it("has the version of package.json", () => {
    const { version } = JSON.parse(text("package.json")) as { version: string };
    expect(all(parsed(manifest), "Version")[0]?.textContent).toBe(`${version}.0`);
  });

  it("opens the pane with the documents that ask for it", () => {
    expect(all(parsed(manifest), "TaskpaneId")[0]?.textContent).toBe("Office.AutoShowTaskpaneWithDocument");
  });
});

describe("the icons", () => {
  it.each([16, 32, 64, 80])("icon-%i.png has that many pixels a side and at most 100 KB", (size) => {
    const file = path.join(root, "assets", `icon-${size}.png`);
    const bytes = readFileSync(file);
    expect(bytes.subarray(1, 4).toString()).toBe("PNG");
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([size, size]);
    expect(statSync(file).size).toBeLessThanOrEqual(100 * 1024);
  });

  it.each(all(parsed(manifest), "Image").filter((image) => image.hasAttribute("size")))("are used at their own size (%#)", (image) => {
    expect(image.getAttribute("resid")).toBe(`Icon.${image.getAttribute("size") ?? ""}`);
  });
});

describe("the functions", () => {
  it("are the same in functions.json, in the bundle and in docs/functions.md", () => {
    const { host, metadata } = loadBundle();
    const ids = metadata.functions.map(({ id }) => id).sort();
    expect(ids).toContain("SALTRATIO");
    expect(host.ids.sort()).toEqual(ids);
    const documented = [...text("docs/functions.md").matchAll(/^### (\w+)$/gm)].map(([, id]) => id);
    expect(documented.sort()).toEqual(ids);
  });
});

describe("a build for another address", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "ledger-"));
  const build = async (base: string): Promise<unknown> => {
    const webpack = path.join(root, "node_modules/webpack-cli/bin/cli.js");
    const options = ["--mode", "production", "--env", `base=${base}`, "--env", `out=${folder}`];
    return promisify(execFile)(process.execPath, [webpack, ...options], { cwd: root });
  };
  beforeAll(async () => build("https://example.org/ledger/"));
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it.each(["manifest.xml", "functions.json"])("leaves no localhost in %s", (name) => {
    const built = readFileSync(path.join(folder, name), "utf8");
    expect(built).toContain("https://example.org/ledger/");
    expect(built).not.toContain("localhost");
    expect(built).not.toContain("%VERSION%");
  });

  it("names only files that were built", () => {
    const built = readFileSync(path.join(folder, "manifest.xml"), "utf8");
    const named = [...built.matchAll(/"https:\/\/example\.org\/ledger\/([^"?]+)/g)].map(([, file]) => file ?? "");
    expect(named.length).toBeGreaterThan(5);
    for (const file of named) expect(statSync(path.join(folder, file)).isFile(), file).toBe(true);
  });

  it.each(["http://example.org", "example.org/ledger"])("is refused for \"%s\", which Excel would not open", async (base) => {
    await expect(build(base)).rejects.toThrow("it must be an address that begins with https://");
  });

  it("lets error cells reach the functions as values", () => {
    expect(JSON.parse(readFileSync(path.join(folder, "functions.json"), "utf8"))).toMatchObject({ allowErrorForDataTypeAny: true });
  });
});
