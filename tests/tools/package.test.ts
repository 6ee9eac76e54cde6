import path from "node:path";
import { strFromU8 } from "fflate";
import { describe, expect, it } from "vitest";
import { packageFiles } from "../../tools/hosting/package-files";

const files = packageFiles(path.resolve(import.meta.dirname, "../.."));

describe("npm run package", () => {
  it("holds the build with its manifest, and a page that says how to install on Windows, Mac and the web", () => {
    for (const name of ["dist/manifest.xml", "dist/taskpane.html", "dist/functions.json", "dist/functions.js", "LICENSE"]) expect(files[name]?.length, name).toBeGreaterThan(0);
    const page = strFromU8(files["install.html"] ?? new Uint8Array());
    for (const place of ["Excel on the web", "Excel on Windows", "Excel on Mac"]) expect(page).toContain(place);
  });

  it("holds the licences of all that ships, those of the drawing modules too", () => {
    const licences = strFromU8(files["dist/licences.txt"] ?? new Uint8Array());
    for (const name of ["Runoff Ledger", "d3-array", "d3-scale", "d3-shape", "d3-time-format"]) expect(licences).toContain(name);
  });

  it("holds nothing of the host's library and no file of the machine's own", () => {
    expect(Object.keys(files).filter((name) => /office|excel-|node_modules|\/\./i.test(name))).toEqual([]);
  });
});
